import { memo } from 'react';
import { itemsText, readItems } from '@/lib/domain/people/items-text';
import { lineContent } from '@/lib/domain/people/line-content';
import { type GarmentOnOffer, type ListLine, sizePlace } from '@/lib/domain/people/list';
import type { ListCheck } from '@/lib/domain/people/list-check';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { type Column, LONGEST_FIELD } from '@/lib/domain/people/person';
import { classNames } from '../ui/class-names';
import type { Move } from './cell-key';
import { type CheckAct, CheckLine } from './check-line';
import { madeId } from './made-id';
import { RosterCell } from './roster-cell';
import styles from './roster-table.module.css';
import { findingWords, type PeopleWords, placeName } from './roster-words';

/** What every line of the table shares. */
export type LineContext = {
  readonly t: PeopleWords;
  readonly columns: readonly Column[];
  readonly garments: readonly GarmentOnOffer[];
  readonly readOnly: boolean;
  readonly lineNumber: (personId: string) => number;
  readonly onEdit: (edits: readonly ListEdit[]) => void;
  readonly onMove: (personId: string, place: string, move: Move) => void;
  readonly onPasteBlock: (personId: string, place: string, text: string) => boolean;
  readonly onUndo: (redo: boolean) => void;
};

type RosterLineProps = {
  context: LineContext;
  line: ListLine;
  /** Null for the line that is begun by writing on it. */
  number: number | null;
  checks: readonly ListCheck[];
};

/** One person: a row of cells, and under it what has to be settled about them. */
export const RosterLine = memo(function RosterLine({ context, line, number, checks }: RosterLineProps) {
  const { t, columns, garments, readOnly } = context;
  const { personId } = line;
  const cellProps = (place: string) => {
    const own = checks.filter((check) => check.place === place);
    const heading = placeName(t, place, columns, garments);
    return {
      heading,
      label: number === null ? t('table.newCell', { column: heading }) : t('table.cell', { column: heading, number }),
      state: stateOf(own),
      describedBy: own.length === 0 ? undefined : own.map((check) => checkId(check)).join(' '),
      readOnly,
      onMove: (move: Move) => context.onMove(personId, place, move),
      onPasteBlock: (text: string) => context.onPasteBlock(personId, place, text),
      onUndo: context.onUndo,
    };
  };
  const commitField = (columnId: string) => (text: string, was: string) =>
    context.onEdit(
      number === null ? [adding(line, { [columnId]: text }, [])] : [{ edit: 'field', personId, columnId, was, text }],
    );
  const commitSizes = (garment: GarmentOnOffer) => (text: string) => {
    const was = line.items.filter(({ garmentId }) => garmentId === garment.garmentId);
    const items = readItems(text, garment, was, madeId);
    const { garmentId } = garment;
    context.onEdit(number === null ? [adding(line, {}, items)] : [{ edit: 'items', personId, garmentId, was, items }]);
  };
  const rowClass = classNames(styles.line, number === null && styles.newLine, checks.length > 0 && styles.checked);
  const width = columns.length + garments.length + 3;
  return (
    <>
      <tr className={rowClass} data-line={personId}>
        <th scope="row" className={styles.number}>
          <span className={styles.cellHeading} aria-hidden="true">
            {number === null ? t('table.newLine') : t('table.lineNumber', { number })}
          </span>
          <span className={styles.wideNumber}>{number ?? '+'}</span>
        </th>
        {columns.map(({ columnId, kind }) => (
          <td key={columnId} data-place={columnId} className={styles[`${kind ?? 'text'}Column`]}>
            <RosterCell
              {...cellProps(columnId)}
              text={line.fields[columnId] ?? ''}
              kind={kind === 'number' ? 'characters' : 'words'}
              longest={LONGEST_FIELD}
              onCommit={commitField(columnId)}
            />
          </td>
        ))}
        {garments.map((garment) => (
          <td key={garment.garmentId} data-place={sizePlace(garment.garmentId)} className={styles.sizeColumn}>
            <RosterCell
              {...cellProps(sizePlace(garment.garmentId))}
              text={itemsText(line.items, garment)}
              kind="size"
              longest={LONGEST_FIELD}
              onCommit={commitSizes(garment)}
            />
          </td>
        ))}
        <td className={styles.confirm}>
          {number === null ? null : <Confirm context={context} line={line} number={number} />}
        </td>
        <td className={styles.remove}>
          {number === null || readOnly ? null : (
            <button
              type="button"
              className={styles.tool}
              aria-label={t('table.remove', { number })}
              onClick={() => context.onEdit([{ edit: 'remove', personId, seen: lineContent(line) }])}
            >
              <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="m3 3 10 10M13 3 3 13" />
              </svg>
            </button>
          )}
        </td>
      </tr>
      {checks.length === 0 ? null : (
        <tr className={styles.checks}>
          <td />
          <td colSpan={width - 1}>
            {checks.map((check) => (
              <CheckLine
                key={checkId(check)}
                id={checkId(check)}
                t={t}
                check={check}
                place={placeName(t, check.place, columns, garments)}
                sentence={findingWords(check, {
                  t,
                  garments,
                  lineNumber: context.lineNumber,
                  text: line.fields[check.place] ?? '',
                })}
                acts={actsFor(context, line, check)}
                readOnly={readOnly}
                onMeant={(why) => context.onEdit([meantEdit(check, why)])}
              />
            ))}
          </td>
        </tr>
      )}
    </>
  );
}, isSameLine);

function Confirm({ context, line, number }: { context: LineContext; line: ListLine; number: number }) {
  const { t, readOnly } = context;
  const { personId, confirmed } = line;
  return (
    <label
      className={styles.confirmLabel}
      title={confirmed ? t('table.confirmedBy', { name: confirmed.by }) : undefined}
    >
      <span className={styles.cellHeading}>{t('table.confirm')}</span>
      <input
        type="checkbox"
        className={styles.tick}
        aria-label={t('table.confirmLine', { number })}
        checked={confirmed !== null}
        disabled={readOnly}
        onChange={({ target }) =>
          context.onEdit([{ edit: 'confirm', personId, seen: lineContent(line), confirmed: target.checked }])
        }
      />
    </label>
  );
}

/** What would mend a finding, each with one press. */
function actsFor({ t, garments, onEdit }: LineContext, line: ListLine, { finding, place }: ListCheck): CheckAct[] {
  const { personId } = line;
  if (finding.code === 'sizeAmbiguous') {
    return finding.choices.map(({ words, blankId, sizeId }) => ({
      words: t('act.choose', { size: words }),
      act: () => {
        const garment = garments.find(({ garmentId }) => sizePlace(garmentId) === place);
        if (!garment) return;
        const was = line.items.filter(({ garmentId }) => garmentId === garment.garmentId);
        const items = was.map((item) =>
          item.size === null && item.typed === finding.typed ? { ...item, size: { blankId, sizeId }, typed: '' } : item,
        );
        onEdit([{ edit: 'items', personId, garmentId: garment.garmentId, was, items }]);
      },
    }));
  }
  if (!('better' in finding) || finding.better === null) return [];
  const { better } = finding;
  const was = line.fields[place] ?? '';
  return [
    {
      words: t('act.write', { text: better }),
      act: () => onEdit([{ edit: 'field', personId, columnId: place, was, text: better }]),
    },
  ];
}

/** What answers a finding with "meant so", or asks it again. */
export function meantEdit({ personId, finding, place, about }: ListCheck, why: string | null): ListEdit {
  return { edit: 'meant', personId, meant: { code: finding.code, place, about, why } };
}

function adding({ personId }: ListLine, fields: Record<string, string>, items: ListLine['items']): ListEdit {
  return { edit: 'add', line: { personId, fields, items, meant: [] }, before: null };
}

function stateOf(checks: readonly ListCheck[]): 'open' | 'meant' | null {
  if (checks.length === 0) return null;
  return checks.some(({ meant }) => meant === null) ? 'open' : 'meant';
}

function checkId({ personId, place, finding, about }: ListCheck): string {
  return `check ${personId} ${place} ${finding.code} ${about}`.replace(/[^\w-]+/gu, '-');
}

/** A long list is drawn line by line as it changes: a line is drawn anew only for what it shows. */
function isSameLine(before: RosterLineProps, after: RosterLineProps): boolean {
  return (
    before.context === after.context &&
    before.line === after.line &&
    before.number === after.number &&
    JSON.stringify(before.checks) === JSON.stringify(after.checks)
  );
}
