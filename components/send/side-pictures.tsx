import type { ReactNode } from 'react';
import styles from './side-pictures.module.css';

type SidePicturesProps = {
  /** `Relay tee` */
  name: string;
  /** `Navy, 19 in all` */
  cloth: string;
  clothHex: string;
  /** Its sides at one scale, front first, each a drawing or a picture. */
  sides: readonly { key: string; picture: ReactNode; words: string }[];
  /** `drawn in M` */
  drawnIn: string;
  /** Its counts, one line. */
  counts: string;
  /** What else there is to see of it: all its sizes on the line. */
  children?: ReactNode;
};

/** A garment as the customer sees it: its sides with their readings, cloth and counts. */
export function SidePictures({ name, cloth, clothHex, sides, drawnIn, counts, children }: SidePicturesProps) {
  return (
    <article className={styles.garment}>
      <header className={styles.head}>
        <h3>{name}</h3>
        <p className={styles.cloth}>
          <svg viewBox="0 0 16 16" aria-hidden="true" className={styles.swatch}>
            <rect width="16" height="16" fill={clothHex} />
          </svg>
          {cloth}
        </p>
      </header>
      <div className={styles.sides}>
        {sides.map(({ key, picture, words }) => (
          <figure key={key} className={styles.side}>
            {picture}
            <figcaption className={styles.words}>{words}</figcaption>
          </figure>
        ))}
      </div>
      <p>
        {counts} <span className={styles.soft}>· {drawnIn}</span>
      </p>
      {children}
    </article>
  );
}
