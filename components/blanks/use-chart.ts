'use client';

import { useEffect, useId, useRef, useState } from 'react';
import { MOST_SIZES } from '@/lib/domain/garment/blank-style';
import type { ChartReading } from '@/lib/domain/garment/chart-text/chart-reading';
import type { AgeBand, GarmentKind } from '@/lib/domain/garment/kinds';
import type { MeasureName } from '@/lib/domain/garment/measures';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { chartField, chartFieldId } from './chart-fields';
import { type ChartRow, type ChartUnits, emptyRow, rowsOfSizes, rowsWithReading } from './chart-rows';

/** Where the chart in the table comes from. */
export type ChartSourceKind = 'starter' | 'own';

type ChartState = { readonly rows: readonly ChartRow[]; readonly source: ChartSourceKind; readonly isEdited: boolean };

/** What may change in one row of the table. */
export type RowEdit =
  | { readonly part: 'label' | 'cost'; readonly text: string }
  | { readonly part: MeasureName; readonly text: string };

/** A chart as it stands in the table, and all that can be done to it. */
export type ChartInHand = ChartState & {
  edit: (rowId: string, edit: RowEdit) => void;
  addRow: () => void;
  removeRow: (rowId: string) => void;
  moveUp: (rowId: string) => void;
  putIn: (reading: Extract<ChartReading, { ok: true }>) => void;
  /** Null where there is no starter chart for this kind and age band. */
  useStarter: (() => void) | null;
  setSource: (source: ChartSourceKind) => void;
};

type ChartOf = ChartUnits & { readonly kind: GarmentKind; readonly ageBand: AgeBand };

/** The table of a chart. A starter chart nobody has edited follows when another kind or age band is chosen. */
export function useChart(of: ChartOf, initial: () => Pick<ChartState, 'rows' | 'source'>): ChartInHand {
  const { kind, ageBand } = of;
  const prefix = useId();
  const made = useRef(0);
  const focus = useRef<string | null>(null);
  const newRowId = () => `new${prefix.replace(/[^\w-]/g, '')}-${made.current++}`;
  const [state, setState] = useState<ChartState>(() => ({ ...initial(), isEdited: false }));
  const starter = STARTER_CHARTS.find((chart) => chart.kind === kind && chart.ageBand === ageBand);
  const starterRows = () =>
    rowsOfSizes(
      (starter?.sizes ?? []).map(({ label, entered }) => ({ sizeId: newRowId(), label, entered, costMinor: null })),
      of,
    );

  const chosen = `${kind} ${ageBand}`;
  const [followed, setFollowed] = useState(chosen);
  if (followed !== chosen) {
    setFollowed(chosen);
    if (state.source === 'starter' && !state.isEdited) {
      setState({
        rows: starter ? starterRows() : [emptyRow(newRowId())],
        source: starter ? 'starter' : 'own',
        isEdited: false,
      });
    }
  }

  useEffect(() => {
    if (focus.current === null) return;
    document.getElementById(focus.current)?.focus();
    focus.current = null;
  });

  const change = (rows: readonly ChartRow[], source = state.source) => setState({ rows, source, isEdited: true });
  const indexOf = (rowId: string) => state.rows.findIndex(({ id }) => id === rowId);
  const focusLabel = (row: ChartRow | undefined) => {
    focus.current = row ? chartFieldId(chartField.label(row.id)) : null;
  };

  return {
    ...state,
    edit: (rowId, { part, text }) =>
      change(state.rows.map((row) => (row.id === rowId ? editedRow(row, part, text) : row))),
    addRow: () => {
      if (state.rows.length >= MOST_SIZES) return;
      const row = emptyRow(newRowId());
      change([...state.rows, row]);
      focusLabel(row);
    },
    removeRow: (rowId) => {
      const at = indexOf(rowId);
      const rows = state.rows.filter(({ id }) => id !== rowId);
      change(rows);
      focusLabel(rows[Math.min(at, rows.length - 1)]);
    },
    moveUp: (rowId) => {
      const at = indexOf(rowId);
      const row = state.rows[at];
      if (!row || at === 0) return;
      change(state.rows.toSpliced(at, 1).toSpliced(at - 1, 0, row));
      focusLabel(row);
    },
    putIn: (reading) => change(rowsWithReading(state.rows, reading, of, newRowId), 'own'),
    useStarter: starter ? () => setState({ rows: starterRows(), source: 'starter', isEdited: false }) : null,
    setSource: (source) => setState({ ...state, source }),
  };
}

function editedRow(row: ChartRow, part: RowEdit['part'], text: string): ChartRow {
  if (part === 'label' || part === 'cost') return { ...row, [part]: text };
  return { ...row, cells: { ...row.cells, [part]: { text, um: row.cells[part]?.um ?? null } } };
}
