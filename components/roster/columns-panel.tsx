import { type FormEvent, useState } from 'react';
import { folded } from '@/lib/domain/people/clean-field';
import { columnIdFor } from '@/lib/domain/people/column-id';
import type { PeopleList } from '@/lib/domain/people/list';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import {
  COLUMN_KINDS,
  type Column,
  type ColumnKind,
  LONGEST_COLUMN_NAME,
  MOST_COLUMNS,
} from '@/lib/domain/people/person';
import { Button } from '../ui/button';
import styles from './panels.module.css';
import type { PeopleWords } from './roster-words';

type ColumnsPanelProps = {
  t: PeopleWords;
  list: PeopleList;
  letteredColumnIds: readonly string[];
  onEdit: (edits: readonly ListEdit[]) => void;
};

/** The columns of the list: what they are called, what they hold, one more, one less. */
export function ColumnsPanel({ t, list, letteredColumnIds, onEdit }: ColumnsPanelProps) {
  const { columns } = list;
  const [typed, setTyped] = useState('');
  const [isTaken, setTaken] = useState(false);
  const put = (next: readonly Column[]) => onEdit([{ edit: 'columns', was: [...columns], columns: [...next] }]);
  const add = (event: FormEvent) => {
    event.preventDefault();
    const name = typed.trim();
    if (name === '') return;
    if (columns.some((column) => folded(column.name) === folded(name))) return setTaken(true);
    put([
      ...columns,
      {
        columnId: columnIdFor(
          name,
          columns.map(({ columnId }) => columnId),
        ),
        name,
        kind: 'text',
      },
    ]);
    setTyped('');
    setTaken(false);
  };
  return (
    <div className={styles.panel}>
      <ul className={styles.columns}>
        {columns.map((column, at) => (
          <li key={column.columnId} className={styles.column}>
            <ColumnName
              t={t}
              column={column}
              number={at + 1}
              onName={(name) => put(columns.with(at, { ...column, name }))}
            />
            <select
              aria-label={t('columns.kind', { name: column.name })}
              value={column.kind ?? 'text'}
              onChange={({ target }) => put(columns.with(at, { ...column, kind: target.value as ColumnKind }))}
            >
              {COLUMN_KINDS.map((kind) => (
                <option key={kind} value={kind}>
                  {t(`columns.kinds.${kind}`)}
                </option>
              ))}
            </select>
            {letteredColumnIds.includes(column.columnId) ? (
              <span className={styles.note}>{t('columns.lettered')}</span>
            ) : columns.length > 1 ? (
              <Button kind="quiet" onClick={() => put(columns.toSpliced(at, 1))}>
                {t('columns.remove', { name: column.name })}
              </Button>
            ) : null}
          </li>
        ))}
      </ul>
      {columns.length >= MOST_COLUMNS ? (
        <p>{t('columns.full')}</p>
      ) : (
        <form className={styles.column} onSubmit={add}>
          <input
            aria-label={t('columns.new')}
            placeholder={t('columns.new')}
            value={typed}
            maxLength={LONGEST_COLUMN_NAME}
            aria-invalid={isTaken || undefined}
            aria-describedby={isTaken ? 'column-taken' : undefined}
            autoComplete="off"
            onChange={({ target }) => {
              setTyped(target.value);
              setTaken(false);
            }}
          />
          <Button type="submit">{t('columns.add')}</Button>
          {isTaken ? (
            <p id="column-taken" role="alert" className={styles.mistake}>
              {t('columns.taken')}
            </p>
          ) : null}
        </form>
      )}
    </div>
  );
}

type ColumnNameProps = { t: PeopleWords; column: Column; number: number; onName: (name: string) => void };

function ColumnName({ t, column, number, onName }: ColumnNameProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const commit = () => {
    const name = typed?.trim() ?? '';
    if (name !== '' && name !== column.name) onName(name);
    setTyped(null);
  };
  return (
    <input
      aria-label={t('columns.name', { number })}
      value={typed ?? column.name}
      maxLength={LONGEST_COLUMN_NAME}
      autoComplete="off"
      onChange={({ target }) => setTyped(target.value)}
      onBlur={commit}
      onKeyDown={({ key }) => (key === 'Enter' ? commit() : undefined)}
    />
  );
}
