import { Fragment, type ReactNode } from 'react';
import styles from './specified-garment.module.css';

/** How many of each size of one band, or of one style of it, and in all. */
export type CountRow = {
  key: string;
  band: string;
  sizes: readonly { label: string; quantity: number }[];
  total: number;
};

/** One print in one of its size groups, in words. */
export type PlacementRow = {
  key: string;
  print: string;
  place: string;
  sizes: string;
  wide: string;
  tall: string;
  down: string;
  across: string;
  /** Why it is meant to cross a seam or to leave the garment, and on which of the sizes; null where it does neither. */
  meant: string | null;
  /** Its print file; null where nothing may be pressed. */
  file: { href: string; words: string; label: string } | null;
};

type SpecifiedGarmentProps = {
  facts: readonly { name: string; value: ReactNode }[];
  pictures: ReactNode;
  counts: readonly CountRow[];
  placements: readonly PlacementRow[];
  words: {
    counts: string;
    all: string;
    placement: string;
    tolerance: string;
    columns: Record<'print' | 'sizes' | 'wide' | 'tall' | 'place' | 'across' | 'file', string>;
  };
};

/** A garment as it is pressed: cloth, counts, and where each print goes on each size. */
export function SpecifiedGarment({ facts, pictures, counts, placements, words }: SpecifiedGarmentProps) {
  const { columns } = words;
  const hasFiles = placements.some(({ file }) => file !== null);
  return (
    <div className={styles.garment}>
      <dl className={styles.facts}>
        {facts.map(({ name, value }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <div className={styles.pictures}>{pictures}</div>
      <div className={styles.counts}>
        {counts.map(({ key, band, sizes, total }) => (
          <section key={key} aria-label={`${words.counts}: ${band}`} tabIndex={0} className={styles.scroll}>
            <table className={styles.table}>
              <caption>
                {words.counts}: {band}
              </caption>
              <thead>
                <tr>
                  {sizes.map(({ label }) => (
                    <th key={label} scope="col">
                      {label}
                    </th>
                  ))}
                  <th scope="col">{words.all}</th>
                </tr>
              </thead>
              <tbody>
                <tr>
                  {sizes.map(({ label, quantity }) => (
                    <td key={label}>{quantity}</td>
                  ))}
                  <td className={styles.total}>{total}</td>
                </tr>
              </tbody>
            </table>
          </section>
        ))}
      </div>
      <div className={styles.places}>
        <table className={styles.placements}>
          <caption>{words.placement}</caption>
          <thead>
            <tr>
              <th scope="col">{columns.print}</th>
              <th scope="col">{columns.sizes}</th>
              <th scope="col">{columns.wide}</th>
              <th scope="col">{columns.tall}</th>
              <th scope="col">{columns.place}</th>
              <th scope="col">{columns.across}</th>
              {hasFiles ? (
                <th scope="col" className={styles.file}>
                  {columns.file}
                </th>
              ) : null}
            </tr>
          </thead>
          <tbody>
            {placements.map(({ key, print, place, sizes, wide, tall, down, across, meant, file }) => (
              <Fragment key={key}>
                <tr>
                  <th scope="row">
                    {print}
                    <span className={styles.place}>{place}</span>
                  </th>
                  <td data-column={columns.sizes}>{sizes}</td>
                  <td data-column={columns.wide} className={styles.reading}>
                    {wide}
                  </td>
                  <td data-column={columns.tall} className={styles.reading}>
                    {tall}
                  </td>
                  <td data-column={columns.place}>{down}</td>
                  <td data-column={columns.across}>{across}</td>
                  {hasFiles ? (
                    <td data-column={columns.file} className={styles.file}>
                      {file ? (
                        <a href={file.href} download aria-label={`${file.words}, ${file.label}`}>
                          {file.words}
                        </a>
                      ) : null}
                    </td>
                  ) : null}
                </tr>
                {meant ? (
                  <tr className={styles.meant}>
                    <td colSpan={hasFiles ? 7 : 6}>{meant}</td>
                  </tr>
                ) : null}
              </Fragment>
            ))}
          </tbody>
        </table>
      </div>
      <p className={styles.tolerance}>{words.tolerance}</p>
    </div>
  );
}
