import type { ReactNode } from 'react';
import { Card } from '../ui/card';
import { Disclosure } from '../ui/disclosure';
import styles from './garment-card.module.css';

type GarmentCardProps = {
  garmentId: string;
  name: string;
  /** `Navy, heather` */
  cloth: string;
  clothHex: string;
  /** Of the second cloth, where there is one. */
  secondHex?: string | undefined;
  fabric: string | null;
  /** Its sides at one scale, front first. */
  flats: ReactNode;
  /** Which size the flats are drawn in. */
  drawnIn: string;
  /** Its counts: a form, or a line where they cannot be changed. */
  counts: ReactNode;
  /** What may be changed; none where the job is locked. */
  changes: readonly { summary: string; form: ReactNode }[];
};

/** A garment of the job: its flats, its cloth, its counts. */
export function GarmentCard({
  garmentId,
  name,
  cloth,
  clothHex,
  secondHex,
  fabric,
  flats,
  drawnIn,
  counts,
  changes,
}: GarmentCardProps) {
  return (
    <Card as="article" id={`garment-${garmentId}`} aria-labelledby={`garment-${garmentId}-name`}>
      <div className={styles.garment}>
        <figure className={styles.flats}>
          <div className={styles.sides}>{flats}</div>
          <figcaption className={styles.drawnIn}>{drawnIn}</figcaption>
        </figure>
        <div className={styles.words}>
          <h3 id={`garment-${garmentId}-name`}>{name}</h3>
          <p className={styles.cloth}>
            <svg viewBox="0 0 16 16" aria-hidden="true" className={styles.swatch}>
              <rect width="16" height="16" fill={clothHex} />
              {secondHex ? <path d="M16 0v16H0Z" fill={secondHex} /> : null}
            </svg>
            {cloth}
            {fabric === null ? null : <span className={styles.fabric}>· {fabric}</span>}
          </p>
          <div className={styles.counts}>{counts}</div>
        </div>
      </div>
      {changes.length > 0 ? (
        <div className={styles.changes}>
          {changes.map(({ summary, form }) => (
            <Disclosure key={summary} summary={summary}>
              {form}
            </Disclosure>
          ))}
        </div>
      ) : null}
    </Card>
  );
}
