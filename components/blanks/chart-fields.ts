import type { StyleSize } from '@/lib/domain/garment/blank-style';
import { type GarmentKind, kindMeasures } from '@/lib/domain/garment/kinds';
import {
  type EnteredMeasures,
  MEASURE_NAMES,
  type MeasureName,
  type MeasureRefusal,
} from '@/lib/domain/garment/measures';
import { type ChartFault, chartFaults, type OtherMeasure } from '@/lib/domain/garment/style-faults';
import type { Micrometres } from '@/lib/domain/measure/length';
import { parseAmount } from '@/lib/domain/money/amount';
import { type ChartRow, type ChartUnits, cellUm, isEmptyRow } from './chart-rows';

/** How the fields of a chart are called: one for the order of its rows, the others by row. */
export const chartField = {
  rows: 'rows',
  source: 'chartSource',
  label: (rowId: string) => `label ${rowId}`,
  cost: (rowId: string) => `cost ${rowId}`,
  measure: (measure: MeasureName, rowId: string) => `${measure} ${rowId}`,
  exact: (measure: MeasureName, rowId: string) => `exact ${measure} ${rowId}`,
} as const;

/** The id on the page of a field of the chart: its name without the space an id cannot have. */
export function chartFieldId(name: string): string {
  return name.replaceAll(' ', '-');
}

/** The rows of a chart as its form sent them; null for a form that holds none. */
export function rowsOfFields(typed: Readonly<Record<string, string>>): ChartRow[] | null {
  const order = typed[chartField.rows];
  if (order === undefined) return null;
  return order
    .split(' ')
    .filter((id) => id !== '')
    .map((id) => ({
      id,
      label: typed[chartField.label(id)] ?? '',
      cost: typed[chartField.cost(id)] ?? '',
      cells: cellsOfFields(typed, id),
    }));
}

function cellsOfFields(typed: Readonly<Record<string, string>>, id: string): ChartRow['cells'] {
  return Object.fromEntries(
    MEASURE_NAMES.flatMap((measure) => {
      const text = typed[chartField.measure(measure, id)];
      if (text === undefined) return [];
      const exact = Number(typed[chartField.exact(measure, id)]);
      return [[measure, { text, um: Number.isInteger(exact) && exact > 0 ? exact : null }]];
    }),
  );
}

/** Longest label of a size, characters. */
const LONGEST_LABEL = 30;

/** Something wrong with a chart that was typed, at the field it is to be mended in. `row` counts from 1. */
export type ChartMistake = { readonly field: string; readonly row: number; readonly label: string } & (
  | { readonly code: 'labelMissing' | 'labelTooLong' | 'repeatedSize' }
  | { readonly code: 'notALength' | 'notPositive'; readonly measure: MeasureName; readonly text: string }
  | { readonly code: 'notAnAmount'; readonly text: string }
  | {
      readonly code: MeasureRefusal['reason'];
      readonly measure: MeasureName;
      readonly um: Micrometres | null;
      readonly other: OtherMeasure | null;
    }
  | {
      readonly code: 'shrinks';
      readonly measure: MeasureName;
      readonly um: Micrometres;
      readonly before: { readonly label: string; readonly um: Micrometres };
    }
);

/** A chart as its form sent it: its sizes where nothing is wrong, and all that is. Rows nobody typed into are left out. */
export function readChart(
  rows: readonly ChartRow[],
  kind: GarmentKind,
  units: ChartUnits,
): { sizes: StyleSize[]; mistakes: ChartMistake[] } {
  const read = rows
    .map((row, index) => ({ row, number: index + 1 }))
    .filter(({ row }) => !isEmptyRow(row))
    .map(({ row, number }) => readRow(row, number, kind, units));
  const legible = read.filter(({ mistakes }) => mistakes.length === 0);
  const faults = chartFaults(
    kind,
    legible.map(({ size }) => size),
  );
  const placed = faults.map((fault) => faultMistake(fault, read));
  return { sizes: read.map(({ size }) => size), mistakes: [...read.flatMap(({ mistakes }) => mistakes), ...placed] };
}

type ReadRow = { number: number; size: StyleSize; mistakes: ChartMistake[] };

function readRow(row: ChartRow, number: number, kind: GarmentKind, { unit, currency }: ChartUnits): ReadRow {
  const label = row.label.trim();
  const place = { row: number, label };
  const mistakes: ChartMistake[] = [];
  if (label === '') mistakes.push({ ...place, field: chartField.label(row.id), code: 'labelMissing' });
  if (label.length > LONGEST_LABEL) mistakes.push({ ...place, field: chartField.label(row.id), code: 'labelTooLong' });
  const entered: EnteredMeasures = {};
  for (const measure of kindMeasures(kind)) {
    const cell = row.cells[measure];
    if (!cell || cell.text.trim() === '') continue;
    const um = cellUm(cell, unit);
    const at = { ...place, field: chartField.measure(measure, row.id), measure, text: cell.text.trim() };
    if (um === null) mistakes.push({ ...at, code: 'notALength' });
    else if (um <= 0) mistakes.push({ ...at, code: 'notPositive' });
    else entered[measure] = um;
  }
  const cost = parseAmount(row.cost, currency);
  if (!(cost.ok || cost.reason === 'empty')) {
    mistakes.push({ ...place, field: chartField.cost(row.id), code: 'notAnAmount', text: row.cost.trim() });
  }
  return { number, size: { sizeId: row.id, label, entered, costMinor: cost.ok ? cost.minor : null }, mistakes };
}

function faultMistake(fault: ChartFault, read: readonly ReadRow[]): ChartMistake {
  const { number, size } = rowOf(read, fault.sizeId);
  const place = { row: number, label: size.label };
  switch (fault.reason) {
    case 'repeatedSize':
      return { ...place, field: chartField.label(fault.sizeId), code: fault.reason };
    case 'shrinks': {
      const { measure } = fault;
      const before = rowOf(read, fault.afterSizeId).size;
      return {
        ...place,
        field: chartField.measure(measure, fault.sizeId),
        code: fault.reason,
        measure,
        um: size.entered[measure] ?? 0,
        before: { label: before.label, um: before.entered[measure] ?? 0 },
      };
    }
    default: {
      const { measure, other } = fault;
      const field = chartField.measure(measure, fault.sizeId);
      return { ...place, field, code: fault.reason, measure, um: size.entered[measure] ?? null, other };
    }
  }
}

function rowOf(read: readonly ReadRow[], sizeId: string): ReadRow {
  const found = read.find(({ size }) => size.sizeId === sizeId);
  if (!found) throw new Error(`no size ${sizeId} in the chart that was read`);
  return found;
}
