import { itemsText } from '@/lib/domain/people/items-text';
import { type GarmentOnOffer, sizePlace } from '@/lib/domain/people/list';
import type { ColumnUse, PastedPerson, PastedTable } from '@/lib/domain/people/paste/pasted';
import type { Column } from '@/lib/domain/people/person';
import { readSize } from '@/lib/domain/people/read-size';
import styles from './paste-panel.module.css';
import { type PeopleWords, placeName } from './roster-words';

/** As many people as a preview shows. */
const MOST_SHOWN = 30;

type PastePreviewProps = {
  t: PeopleWords;
  /** Null for a message: it has no columns to choose. */
  table: PastedTable | null;
  uses: readonly ColumnUse[];
  onUses: (uses: readonly ColumnUse[]) => void;
  /** Those of the list and those the table brings. */
  columns: readonly Column[];
  ownColumns: readonly Column[];
  garments: readonly GarmentOnOffer[];
  people: readonly PastedPerson[];
};

/** What a pasted text was understood as, before any of it counts. */
export function PastePreview({ t, table, uses, onUses, columns, ownColumns, garments, people }: PastePreviewProps) {
  const filled = columns.filter(({ columnId }) => people.some(({ fields }) => fields[columnId] !== undefined));
  const sized = garments.filter(({ garmentId }) =>
    people.some(({ items }) => items.some((item) => item.garmentId === garmentId)),
  );
  return (
    <div className={styles.preview}>
      <p role="status" className={styles.readAs}>
        {table ? t('paste.asTable', { count: people.length }) : t('paste.asMessage', { count: people.length })}
      </p>
      {table ? (
        <div className={styles.uses}>
          {uses.map((use, at) => {
            const heading = table.headings?.[at] || t('paste.column', { number: at + 1 });
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: a pasted column is named by nothing but its place
              <label key={at} className={styles.use}>
                <span>{t('paste.use', { heading })}</span>
                <select
                  value={choiceOf(use)}
                  onChange={({ target }) => onUses(uses.with(at, chosenUse(target.value, heading)))}
                >
                  {ownColumns.map(({ columnId, name }) => (
                    <option key={columnId} value={`field ${columnId}`}>
                      {t('paste.useField', { name })}
                    </option>
                  ))}
                  {garments.map(({ garmentId, name }) => (
                    <option key={garmentId} value={`size ${garmentId}`}>
                      {garments.length === 1 ? t('paste.useSize') : t('paste.useSizeOf', { garment: name })}
                    </option>
                  ))}
                  <option value="quantity">{t('paste.useQuantity')}</option>
                  <option value="newField">
                    {t('paste.useNew', { name: use.use === 'newField' ? use.name : heading })}
                  </option>
                  <option value="leave">{t('paste.useLeave')}</option>
                </select>
              </label>
            );
          })}
        </div>
      ) : null}
      <div className={styles.scroll}>
        <table className={styles.people}>
          <caption>{t('paste.understood')}</caption>
          <thead>
            <tr>
              {filled.map(({ columnId, name }) => (
                <th key={columnId} scope="col">
                  {name}
                </th>
              ))}
              {sized.map(({ garmentId }) => (
                <th key={garmentId} scope="col">
                  {placeName(t, sizePlace(garmentId), columns, garments)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {people.slice(0, MOST_SHOWN).map((person, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: people of a text have no ids yet
              <tr key={at}>
                {filled.map(({ columnId, kind }) => (
                  <td key={columnId} className={kind === 'number' ? styles.characters : undefined}>
                    {person.fields[columnId] ?? ''}
                  </td>
                ))}
                {sized.map((garment) => (
                  <SizeCell key={garment.garmentId} t={t} garment={garment} person={person} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {people.length > MOST_SHOWN ? <p>{t('paste.more', { count: people.length - MOST_SHOWN })}</p> : null}
    </div>
  );
}

function SizeCell({ t, garment, person }: { t: PeopleWords; garment: GarmentOnOffer; person: PastedPerson }) {
  const items = person.items.map((item) => ({ ...item, itemId: '' }));
  const unread = items.find(({ garmentId, size }) => garmentId === garment.garmentId && size === null);
  const words = itemsText(items, garment);
  if (!unread) return <td>{words}</td>;
  const read = readSize(unread.typed, garment.sizes);
  const isAsked = !read.ok && read.reason === 'ambiguous';
  return (
    <td className={styles.unread}>
      {isAsked ? t('paste.ambiguous', { typed: words }) : t('paste.unread', { typed: words })}
    </td>
  );
}

function choiceOf(use: ColumnUse): string {
  if (use.use === 'field') return `field ${use.columnId}`;
  if (use.use === 'size') return `size ${use.garmentId}`;
  return use.use;
}

function chosenUse(value: string, heading: string): ColumnUse {
  const [kind, id = ''] = value.split(' ');
  if (kind === 'field') return { use: 'field', columnId: id };
  if (kind === 'size') return { use: 'size', garmentId: id };
  if (kind === 'newField') return { use: 'newField', name: heading, kind: 'text' };
  return { use: kind === 'quantity' ? 'quantity' : 'leave' };
}
