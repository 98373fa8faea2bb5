import type { Severity } from '@/lib/domain/art/findings/art-finding';
import { Card } from '../ui/card';
import { LinkButton } from '../ui/link-button';
import styles from './art-list.module.css';

/** A picture of the job, in words ready to show. */
export type ShownArt = {
  artId: string;
  /** The page where it is checked and mended. */
  href: string;
  /** Address of a small copy of the picture. */
  src: string;
  alt: string;
  widthPx: number;
  heightPx: number;
  name: string;
  /** How it was made from another picture; null for an upload. */
  mended: string | null;
  /** `sharp to 5.0 in, fair to 7.5 in, soft beyond` */
  sharpness: string;
  pixels: string;
  placed: string;
  /** The heaviest finding, and how many others there are; null where nothing was found. */
  worst: { severity: Severity; words: string } | null;
  more: string | null;
  /** What was noticed about a file that was not checked, one sentence each. */
  notes: readonly string[];
  /** What the way to its page is called. */
  mend: string;
};

const marks: Record<Severity, string> = { stops: '✕', warns: '△', notes: 'i' };

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
              {each.mended ? <p className={styles.soft}>{each.mended}</p> : null}
              {each.worst ? (
                <p className={styles[each.worst.severity]}>
                  <span aria-hidden="true">{marks[each.worst.severity]} </span>
                  {each.worst.words} {each.more ? <span className={styles.soft}>{each.more}</span> : null}
                </p>
              ) : null}
              {each.notes.map((note) => (
                <p key={note} className={styles.warns}>
                  <span aria-hidden="true">△ </span>
                  {note}
                </p>
              ))}
              <div>
                <LinkButton href={each.href} aria-label={`${each.mend}: ${each.name}`}>
                  {each.mend}
                </LinkButton>
              </div>
            </div>
          </div>
        </Card>
      ))}
    </ul>
  );
}
