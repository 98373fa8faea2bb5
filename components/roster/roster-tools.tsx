import { folded } from '@/lib/domain/people/clean-field';
import type { GarmentOnOffer, PeopleList } from '@/lib/domain/people/list';
import { isBlankLine } from '@/lib/domain/people/list';
import type { ListCheck, OpenInList } from '@/lib/domain/people/list-check';
import { listCounts } from '@/lib/domain/people/list-counts';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { Button } from '../ui/button';
import { classNames } from '../ui/class-names';
import type { ListShown } from './list-keeper';
import { mendsOfAll } from './mends-of-all';
import styles from './roster-tools.module.css';
import type { PeopleWords } from './roster-words';
import type { ShownLines } from './use-shown-lines';

type RosterToolsProps = {
  t: PeopleWords;
  jobId: string;
  shown: ListShown;
  garments: readonly GarmentOnOffer[];
  checks: readonly ListCheck[];
  open: OpenInList;
  view: ShownLines;
  locked: boolean;
  onEdit: (edits: readonly ListEdit[]) => void;
  onUndo: (redo: boolean) => void;
  onPaste: () => void;
};

/** Above the table: what the list comes to, how it stands with saving, back and forth, and which lines are shown. */
export function RosterTools(props: RosterToolsProps) {
  const { t, shown, garments, checks, open, view, locked, onUndo, onPaste } = props;
  const { list } = shown;
  return (
    <section className={styles.tools} aria-label={t('tools.label')}>
      <div className={styles.row}>
        <p className={styles.summary}>{summaryWords(t, list, garments)}</p>
        <SavingMark t={t} shown={shown} />
      </div>
      <div className={styles.row}>
        {locked ? null : (
          <>
            <Button kind="primary" onClick={onPaste}>
              {t('tools.addMany')}
            </Button>
            <Button disabled={!shown.canUndo} onClick={() => onUndo(false)}>
              {t('tools.undo')}
            </Button>
            <Button disabled={!shown.canRedo} onClick={() => onUndo(true)}>
              {t('tools.redo')}
            </Button>
          </>
        )}
        {list.lines.length === 0 ? null : (
          <a className={styles.link} href={`/api/people/${encodeURIComponent(props.jobId)}/list.csv`} download>
            {t('tools.csv')}
          </a>
        )}
      </div>
      {list.lines.length === 0 ? null : (
        <div className={styles.row}>
          <label className={styles.find}>
            <span>{t('tools.find')}</span>
            <input type="search" value={view.wanted} onChange={({ target }) => view.find(target.value)} />
          </label>
          {list.columns
            .filter(({ kind }) => kind === 'group')
            .map(({ columnId, name }) => (
              <label key={columnId} className={styles.find}>
                <span>{name}</span>
                <select
                  value={view.groups[columnId] ?? ''}
                  onChange={({ target }) => view.chooseGroup(columnId, target.value)}
                >
                  <option value="">{t('tools.everyGroup', { column: name })}</option>
                  {valuesOf(list, columnId).map(([value, words]) => (
                    <option key={value} value={value}>
                      {words}
                    </option>
                  ))}
                </select>
              </label>
            ))}
          {open.findings > 0 || view.onlyOpen ? (
            <Button aria-pressed={view.onlyOpen} onClick={() => view.showOnlyOpen(!view.onlyOpen)}>
              {view.onlyOpen ? t('tools.allLines') : t('tools.onlyOpen', { count: linesOpen(checks) })}
            </Button>
          ) : null}
          <output className={classNames(styles.open, open.findings === 0 && styles.settled)}>
            {open.findings === 0 ? '✓ ' : '△ '}
            {t('summary.open', { count: open.findings })}
          </output>
        </div>
      )}
      <MendAll {...props} />
    </section>
  );
}

/** What can be put right in many lines at once. */
function MendAll({ t, shown, checks, locked, onEdit }: RosterToolsProps) {
  const mends = locked ? [] : mendsOfAll(shown.list, checks);
  if (mends.length === 0) return null;
  return (
    <div className={styles.row}>
      {mends.map(({ code, edits }) => (
        <Button key={code} kind="quiet" onClick={() => onEdit(edits)}>
          {t('tools.mendAll', { code, count: edits.length })}
        </Button>
      ))}
    </div>
  );
}

function SavingMark({ t, shown }: { t: PeopleWords; shown: ListShown }) {
  const { saving } = shown;
  const isBad = saving.kind === 'trying' || saving.kind === 'stopped';
  return (
    <p role="status" className={classNames(styles.saving, isBad && styles.unsaved)}>
      {saving.kind === 'saved' ? <span aria-hidden="true">✓ </span> : null}
      {isBad ? t(`saving.${saving.reason}`) : saving.kind === 'asIs' ? '' : t(`saving.${saving.kind}`)}
    </p>
  );
}

function summaryWords(t: PeopleWords, list: PeopleList, garments: readonly GarmentOnOffer[]): string {
  const lines = list.lines.filter((line) => !isBlankLine(line));
  const counts = listCounts(lines, list.settings.spares, garments);
  const total = counts.reduce((sum, { quantity }) => sum + quantity, 0);
  const spares = listCounts([], list.settings.spares, garments).reduce((sum, { quantity }) => sum + quantity, 0);
  const confirmed = lines.filter((line) => line.confirmed !== null).length;
  return [
    t('summary.people', { count: lines.length }),
    ...(total > 0 ? [t('summary.garments', { count: total })] : []),
    ...(spares > 0 ? [t('summary.spares', { count: spares })] : []),
    ...(confirmed > 0 || list.settings.confirmEach
      ? [t('summary.confirmed', { done: confirmed, all: lines.length })]
      : []),
  ].join(' · ');
}

function linesOpen(checks: readonly ListCheck[]): number {
  return new Set(checks.flatMap(({ personId, meant }) => (meant === null && personId !== null ? [personId] : []))).size;
}

/** Each value of a column once, however it is written. */
function valuesOf({ lines }: PeopleList, columnId: string): [string, string][] {
  const values = new Map<string, string>();
  for (const { fields } of lines) {
    const words = (fields[columnId] ?? '').trim();
    if (words !== '' && !values.has(folded(words))) values.set(folded(words), words);
  }
  return [...values].toSorted(([a], [b]) => a.localeCompare(b));
}
