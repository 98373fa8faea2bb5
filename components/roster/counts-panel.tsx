import { useState } from 'react';
import type { GarmentOnOffer, PeopleList, SizeOnOffer } from '@/lib/domain/people/list';
import { countedOf, listCounts } from '@/lib/domain/people/list-counts';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { MOST_OF_ONE_ITEM } from '@/lib/domain/people/person';
import styles from './panels.module.css';
import type { PeopleWords } from './roster-words';

type CountsPanelProps = {
  t: PeopleWords;
  list: PeopleList;
  garments: readonly GarmentOnOffer[];
  readOnly: boolean;
  onEdit: (edits: readonly ListEdit[]) => void;
};

/** What the list comes to, size by size, with the spares that are made besides. */
export function CountsPanel(props: CountsPanelProps) {
  return (
    <div className={styles.panel}>
      <p className={styles.note}>{props.t('counts.note')}</p>
      {props.garments.map((garment) => (
        <GarmentCounts key={garment.garmentId} {...props} garment={garment} />
      ))}
    </div>
  );
}

function GarmentCounts({
  t,
  list,
  garments,
  garment,
  readOnly,
  onEdit,
}: CountsPanelProps & { garment: GarmentOnOffer }) {
  const { garmentId } = garment;
  const ofGarment = (counts: ReturnType<typeof listCounts>) => counts.filter((each) => each.garmentId === garmentId);
  const people = ofGarment(listCounts(list.lines, [], garments));
  const spares = ofGarment(listCounts([], list.settings.spares, garments));
  const hasOrder = garment.ordered.some(({ quantity }) => quantity > 0);
  const sum = (counts: readonly { quantity: number }[]) => counts.reduce((all, { quantity }) => all + quantity, 0);
  return (
    <div className={styles.scroll}>
      <table className={styles.counts}>
        <caption>{garment.name}</caption>
        <thead>
          <tr>
            <th scope="col">{t('counts.size')}</th>
            <th scope="col">{t('counts.people')}</th>
            <th scope="col">{t('counts.spare')}</th>
            <th scope="col">{t('counts.total')}</th>
            {hasOrder ? <th scope="col">{t('counts.ordered')}</th> : null}
          </tr>
        </thead>
        <tbody>
          {garment.sizes.map((size) => {
            const total = countedOf(people, size) + countedOf(spares, size);
            const ordered = countedOf(garment.ordered, size);
            return (
              <tr key={`${size.blankId} ${size.sizeId}`}>
                <th scope="row">{size.words}</th>
                <td>{countedOf(people, size) || ''}</td>
                <td>
                  {readOnly ? (
                    countedOf(spares, size) || ''
                  ) : (
                    <SpareField
                      label={t('counts.spareOf', { size: size.words, garment: garment.name })}
                      quantity={countedOf(spares, size)}
                      onQuantity={(quantity) => onEdit([spareEdit(garmentId, size, quantity)])}
                    />
                  )}
                </td>
                <td>{total || ''}</td>
                {hasOrder ? <td className={ordered === total ? undefined : styles.differs}>{ordered || ''}</td> : null}
              </tr>
            );
          })}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{t('counts.sum')}</th>
            <td>{sum(people)}</td>
            <td>{sum(spares)}</td>
            <td>{sum(people) + sum(spares)}</td>
            {hasOrder ? <td>{sum(garment.ordered)}</td> : null}
          </tr>
        </tfoot>
      </table>
    </div>
  );
}

function spareEdit(garmentId: string, { blankId, sizeId }: SizeOnOffer, quantity: number): ListEdit {
  return { edit: 'spare', garmentId, blankId, sizeId, quantity };
}

type SpareFieldProps = { label: string; quantity: number; onQuantity: (quantity: number) => void };

function SpareField({ label, quantity, onQuantity }: SpareFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const isCount = typed === null || /^\s*\d{0,5}\s*$/.test(typed);
  const commit = () => {
    const count = Math.min(Number(typed ?? quantity), MOST_OF_ONE_ITEM);
    if (!isCount) return;
    if (count !== quantity) onQuantity(count);
    setTyped(null);
  };
  return (
    <input
      aria-label={label}
      aria-invalid={!isCount || undefined}
      inputMode="numeric"
      autoComplete="off"
      value={typed ?? (quantity === 0 ? '' : String(quantity))}
      onChange={({ target }) => setTyped(target.value)}
      onBlur={commit}
      onKeyDown={({ key }) => (key === 'Enter' ? commit() : undefined)}
    />
  );
}
