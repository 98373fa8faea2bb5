import { Card } from '../ui/card';
import styles from './art-list.module.css';

/** A picture of the job, in words ready to show. */
export type ShownArt = {
  artId: string;
  /** Address of a small copy of the picture. */
  src: string;
  alt: string;
  widthPx: number;
  heightPx: number;
  name: string;
  /** `sharp to 5.0 in, fair to 7.5 in, soft beyond` */
  sharpness: string;
  pixels: string;
  placed: string;
  /** What was noticed about the file, one sentence each. */
  notes: readonly string[];
};

/** The pictures of a job, each on a chequered ground so that its clear parts show. */
export function ArtList({ art }: { art: readonly ShownArt[] }) {
  return (
    <ul className={styles.list}>
      {art.map((each) => (
        <Card key={each.artId} as="li">
          <div className={styles.art}>
            <div className={styles.ground}>
              {/* biome-ignore lint/performance/noImgElement: a small copy made by our own server, shown as it is */}
              <img src={each.src} alt={each.alt} width={each.widthPx} height={each.heightPx} loading="lazy" />
            </div>
            <div className={styles.words}>
              <h3 className={styles.name}>{each.name}</h3>
              <p>{each.sharpness}</p>
              <p className={styles.soft}>
                {each.pixels} · {each.placed}
              </p>
              {each.notes.map((note) => (
                <p key={note} className={styles.note}>
                  <span aria-hidden="true">△ </span>
                  {note}
                </p>
              ))}
            </div>
          </div>
        </Card>
      ))}
    </ul>
  );
}
