import { Card } from '../ui/card';
import styles from './sent-pictures.module.css';

/** A picture that was handed in, and what was seen in it, in words ready to show. */
export type SentPicture = {
  readonly artId: string;
  readonly src: string;
  readonly alt: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly name: string;
  /** What came of it on the whole, and whether there is something to do. */
  readonly verdict: string;
  readonly kind: 'good' | 'look';
  /** One sentence each, what weighs most first. */
  readonly findings: readonly { readonly title: string | null; readonly text: string }[];
};

type SentPicturesProps = {
  title: string;
  /** At which size, and on which cloth, they were looked at. */
  seenAt: string;
  pictures: readonly SentPicture[];
};

/** What a customer sent, each picture with what will become of it on cloth. */
export function SentPictures({ title, seenAt, pictures }: SentPicturesProps) {
  if (pictures.length === 0) return null;
  return (
    <section aria-labelledby="sent" className={styles.sent}>
      <h2 id="sent">{title}</h2>
      <p className={styles.seenAt}>{seenAt}</p>
      <ul className={styles.list}>
        {pictures.map((picture) => (
          <Card key={picture.artId} as="li">
            <article className={styles.picture}>
              <div className={styles.ground}>
                {/* biome-ignore lint/performance/noImgElement: a small copy made by our own server, shown as it is */}
                <img src={picture.src} alt={picture.alt} width={picture.widthPx} height={picture.heightPx} />
              </div>
              <h3 className={styles.name}>{picture.name}</h3>
              <p className={picture.kind === 'good' ? styles.good : styles.look}>
                <span aria-hidden="true">{picture.kind === 'good' ? '✓ ' : '△ '}</span>
                {picture.verdict}
              </p>
              {picture.findings.length > 0 ? (
                <ul className={styles.findings}>
                  {picture.findings.map(({ title: what, text }) => (
                    <li key={text}>
                      {what ? <b>{what}. </b> : null}
                      {text}
                    </li>
                  ))}
                </ul>
              ) : null}
            </article>
          </Card>
        ))}
      </ul>
    </section>
  );
}
