'use client';

import { useMemo, useRef, useState } from 'react';
import { type GarmentOnOffer, type ListLine, type PeopleList, sizePlace } from '@/lib/domain/people/list';
import type { ListCheck } from '@/lib/domain/people/list-check';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import type { Move } from './cell-key';
import { madeId } from './made-id';
import { pastedBlock } from './pasted-block';
import { type LineContext, RosterLine } from './roster-line';
import styles from './roster-table.module.css';
import { type PeopleWords, placeName } from './roster-words';
import type { Sorting } from './shown-lines';

type RosterTableProps = {
  t: PeopleWords;
  list: PeopleList;
  garments: readonly GarmentOnOffer[];
  /** The lines that are shown, in the order they are. */
  lines: readonly ListLine[];
  checks: readonly ListCheck[];
  sorting: Sorting | null;
  readOnly: boolean;
  /** The id of the line that can be begun first; made with the page, so that both sides of it agree. */
  firstLineId: string;
  onSort: (place: string) => void;
  onEdit: (edits: readonly ListEdit[]) => void;
  onUndo: (redo: boolean) => void;
  /** A block that does not fit where it was pasted is looked at first. */
  onPasteList: (text: string) => void;
};

const NONE: readonly ListCheck[] = [];

/** The list as a table to write in: a line a person, a column each of words and sizes; on a phone a card a person. */
export function RosterTable(props: RosterTableProps) {
  const { t, list, garments, lines, checks, sorting, readOnly, onEdit, onUndo, onPasteList, onSort } = props;
  const { columns } = list;
  const body = useRef<HTMLTableSectionElement>(null);
  const latest = useRef({ list, lines, onEdit, onUndo, onPasteList });
  latest.current = { list, lines, onEdit, onUndo, onPasteList };
  const [begun, setBegun] = useState(() => blankLine(props.firstLineId));
  // The line that was begun is on the list by now: the next one to begin is another.
  if (list.lines.some(({ personId }) => personId === begun.personId)) setBegun(blankLine(madeId()));

  const numbers = useMemo(() => new Map(list.lines.map(({ personId }, at) => [personId, at + 1])), [list.lines]);
  const numberKey = list.lines.map(({ personId }) => personId).join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the numbers change with the order of the lines alone
  const context = useMemo((): LineContext => {
    const places = [
      ...columns.map(({ columnId }) => columnId),
      ...garments.map(({ garmentId }) => sizePlace(garmentId)),
    ];
    const focus = (line: Element | null | undefined, place: string) =>
      line?.querySelector<HTMLInputElement>(`[data-place="${CSS.escape(place)}"] input`)?.focus();
    return {
      t,
      columns,
      garments,
      readOnly,
      lineNumber: (personId) => numbers.get(personId) ?? 0,
      onEdit: (edits) => latest.current.onEdit(edits),
      onUndo: (redo) => latest.current.onUndo(redo),
      onMove: (personId, place, move) => {
        const rows = [...(body.current?.querySelectorAll('[data-line]') ?? [])];
        const at = rows.findIndex((row) => row.getAttribute('data-line') === personId);
        const [down, right] = STEPS[move];
        focus(rows[at + down], places[places.indexOf(place) + right] ?? place);
      },
      onPasteBlock: (personId, place, text) => {
        const { list: now, lines: shown } = latest.current;
        const edits = pastedBlock(text, { personId, place }, { list: now, shown, places, garments });
        if (edits === null) latest.current.onPasteList(text);
        else latest.current.onEdit(edits);
        return true;
      },
    };
  }, [t, columns, garments, readOnly, numberKey]);

  const byPerson = useMemo(() => {
    const found = new Map<string, ListCheck[]>();
    for (const check of checks) {
      if (check.personId !== null) found.set(check.personId, [...(found.get(check.personId) ?? []), check]);
    }
    return found;
  }, [checks]);
  // One row of keys: the line that was begun stays the same row, and the hand in it, once it is on the list.
  const rows = [
    ...lines.map((line) => ({ line, number: numbers.get(line.personId) ?? 0 })),
    ...(readOnly ? [] : [{ line: begun, number: null }]),
  ];
  const head = (place: string) => {
    const name = placeName(t, place, columns, garments);
    const isSorted = sorting?.place === place;
    return (
      <th key={place} scope="col" aria-sort={isSorted ? (sorting.down ? 'descending' : 'ascending') : undefined}>
        <button
          type="button"
          className={styles.sort}
          aria-label={t('table.sort', { column: name })}
          onClick={() => onSort(place)}
        >
          {name}
          <span aria-hidden="true" className={styles.sortMark}>
            {isSorted ? (sorting.down ? '↓' : '↑') : ''}
          </span>
        </button>
      </th>
    );
  };
  return (
    <div className={styles.scroll}>
      <table className={styles.table} aria-label={t('table.label')}>
        <thead>
          <tr>
            <th scope="col" className={styles.numberHead}>
              <span className="visually-hidden">{t('table.line')}</span>
            </th>
            {columns.map(({ columnId }) => head(columnId))}
            {garments.map(({ garmentId }) => head(sizePlace(garmentId)))}
            <th scope="col" className={styles.confirmHead}>
              {t('table.confirm')}
            </th>
            <td />
          </tr>
        </thead>
        <tbody ref={body}>
          {rows.map(({ line, number }) => (
            <RosterLine
              key={line.personId}
              context={context}
              line={line}
              number={number}
              checks={byPerson.get(line.personId) ?? NONE}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

const STEPS: Readonly<Record<Move, readonly [down: number, right: number]>> = {
  up: [-1, 0],
  down: [1, 0],
  left: [0, -1],
  right: [0, 1],
};

function blankLine(personId: string): ListLine {
  return { personId, fields: {}, items: [], meant: [], version: 1, confirmed: null };
}
