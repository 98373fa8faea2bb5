import { useEffect, useMemo, useRef, useState } from 'react';
import { columnIdFor } from '@/lib/domain/people/column-id';
import { type GarmentOnOffer, MOST_ITEMS, type PeopleList } from '@/lib/domain/people/list';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { guessUses } from '@/lib/domain/people/paste/paste-table';
import type { ColumnUse, PastedPerson } from '@/lib/domain/people/paste/pasted';
import { peopleOfTable, readPaste } from '@/lib/domain/people/paste/read-paste';
import { type Column, MOST_PEOPLE } from '@/lib/domain/people/person';
import { Button } from '../ui/button';
import { readFileText } from '../ui/read-file-text';
import { madeId } from './made-id';
import styles from './paste-panel.module.css';
import { PastePreview } from './paste-preview';
import type { PeopleWords } from './roster-words';

type PastePanelProps = {
  t: PeopleWords;
  list: PeopleList;
  garments: readonly GarmentOnOffer[];
  text: string;
  onAdd: (edits: readonly ListEdit[]) => void;
  onClose: () => void;
};

/** A whole list at once: what was pasted, what it was understood as, and only then added. */
export function PastePanel({ t, list, garments, text: begun, onAdd, onClose }: PastePanelProps) {
  const [text, setText] = useState(begun);
  const [chosen, setChosen] = useState<readonly ColumnUse[] | null>(null);
  const [fileRefused, setFileRefused] = useState(false);
  const area = useRef<HTMLTextAreaElement>(null);
  useEffect(() => area.current?.focus(), []);
  const { columns } = list;
  const room = MOST_PEOPLE - list.lines.length;
  const read = useMemo(() => readPaste(text, columns, garments, room), [text, columns, garments, room]);
  const guessed = useMemo(
    () => (read.ok && read.kind === 'table' ? guessUses(read.table, columns, garments) : []),
    [read, columns, garments],
  );
  const uses = chosen ?? guessed;
  const { added, idOf } = useMemo(() => newColumns(columns, uses), [columns, uses]);
  const people = useMemo((): readonly PastedPerson[] => {
    if (!read.ok) return [];
    return read.kind === 'message' ? read.people : peopleOfTable(read.table, uses, idOf, garments);
  }, [read, uses, idOf, garments]);
  const put = (next: string) => {
    setText(next);
    setChosen(null);
    setFileRefused(false);
  };
  const load = async (file: File | undefined) => {
    if (!file) return;
    const loaded = await readFileText(file);
    if (loaded.ok) put(loaded.text);
    else setFileRefused(true);
  };
  const add = () => {
    onAdd([
      ...(added.length > 0 ? [{ edit: 'columns' as const, was: [...columns], columns: [...columns, ...added] }] : []),
      ...people.map(({ fields, items }): ListEdit => {
        const made = items.slice(0, MOST_ITEMS).map((item) => ({ ...item, itemId: madeId() }));
        return {
          edit: 'add',
          line: { personId: madeId(), fields: { ...fields }, items: made, meant: [] },
          before: null,
        };
      }),
    ]);
    onClose();
  };
  return (
    <section className={styles.panel} aria-label={t('paste.title')}>
      <label htmlFor="paste-list" className={styles.label}>
        {t('paste.label')}
      </label>
      <p id="paste-hint" className={styles.hint}>
        {t('paste.hint')}
      </p>
      <textarea
        ref={area}
        id="paste-list"
        aria-describedby="paste-hint"
        rows={5}
        spellCheck={false}
        autoComplete="off"
        value={text}
        onChange={({ target }) => put(target.value)}
      />
      <label className={styles.file}>
        <span>{t('paste.file')}</span>
        <input
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          onChange={({ target }) => void load(target.files?.[0])}
        />
      </label>
      {fileRefused ? (
        <p role="alert" className={styles.refused}>
          {t('paste.refused.file')}
        </p>
      ) : null}
      {!read.ok && text !== '' && !fileRefused ? (
        <p role="alert" className={styles.refused}>
          {refusalWords(t, read)}
        </p>
      ) : null}
      {read.ok ? (
        <PastePreview
          t={t}
          table={read.kind === 'table' ? read.table : null}
          uses={uses}
          onUses={setChosen}
          columns={[...columns, ...added]}
          ownColumns={columns}
          garments={garments}
          people={people}
        />
      ) : null}
      <div className={styles.acts}>
        {people.length > 0 ? (
          <Button kind="primary" onClick={add}>
            {t('paste.submit', { count: people.length })}
          </Button>
        ) : null}
        <Button onClick={onClose}>{t('paste.cancel')}</Button>
      </div>
    </section>
  );
}

function refusalWords(t: PeopleWords, read: Extract<ReturnType<typeof readPaste>, { ok: false }>): string {
  if (read.reason === 'tooMany') return t('paste.refused.tooMany', { lines: read.lines, most: read.most });
  if (read.reason === 'cellTooLong') return t('paste.refused.cellTooLong', { line: read.line, most: read.most });
  return t(`paste.refused.${read.reason}`);
}

type NewField = Extract<ColumnUse, { use: 'newField' }>;

/** The columns a pasted table brings, and the id each gets. */
function newColumns(
  columns: readonly Column[],
  uses: readonly ColumnUse[],
): { added: Column[]; idOf: (use: NewField) => string } {
  const added: Column[] = [];
  const ids = new Map<NewField, string>();
  for (const use of uses) {
    if (use.use !== 'newField') continue;
    const taken = [...columns, ...added].map(({ columnId }) => columnId);
    const columnId = columnIdFor(use.name, taken);
    added.push({ columnId, name: use.name.slice(0, 60), kind: use.kind });
    ids.set(use, columnId);
  }
  return { added, idOf: (use) => ids.get(use) ?? columnIdFor(use.name, []) };
}
