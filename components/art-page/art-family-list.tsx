import Link from 'next/link';
import styles from './art-family-list.module.css';

/** A picture made from an upload, or the upload itself, in words ready to show. */
export type FamilyPicture = {
  readonly artId: string;
  readonly href: string;
  readonly src: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly words: string;
  /** Said of the one whose page this is. */
  readonly note: string | null;
};

/** An upload and what was made from it, each leading to its own page. */
export function ArtFamilyList({ title, pictures }: { title: string; pictures: readonly FamilyPicture[] }) {
  return (
    <section aria-labelledby="family-title" className={styles.family}>
      <h2 id="family-title" className={styles.title}>
        {title}
      </h2>
      <ul className={styles.list}>
        {pictures.map(({ artId, href, src, widthPx, heightPx, words, note }) => (
          <li key={artId}>
            <Link href={href} prefetch={false} className={styles.picture} aria-current={note ? 'page' : undefined}>
              <span className={styles.ground}>
                {/* biome-ignore lint/performance/noImgElement: a small copy made by our own server, shown as it is */}
                <img src={src} alt="" width={widthPx} height={heightPx} loading="lazy" />
              </span>
              <span>
                {words}
                {note ? ` (${note})` : null}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
