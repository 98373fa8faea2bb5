import Link from 'next/link';
import type { ReactNode } from 'react';
import styles from './drawn-blank.module.css';

/** Another size or colour to draw the flat in. */
export type DrawnChoice = {
  readonly key: string;
  readonly words: string;
  readonly href: string;
  readonly isChosen: boolean;
  readonly hex?: string;
};

type DrawnBlankProps = {
  /** Its sides at one scale, front first. */
  flats: ReactNode;
  caption: string;
  sizesLabel: string;
  sizes: readonly DrawnChoice[];
  coloursLabel: string;
  colours: readonly DrawnChoice[];
};

/** A blank's flat in one size and colour, and the others to look at. */
export function DrawnBlank({ flats, caption, sizesLabel, sizes, coloursLabel, colours }: DrawnBlankProps) {
  return (
    <div className={styles.drawn}>
      <figure className={styles.flats}>
        <div className={styles.sides}>{flats}</div>
        <figcaption className={styles.caption}>{caption}</figcaption>
      </figure>
      <Choices label={sizesLabel} choices={sizes} />
      {colours.length > 1 ? <Choices label={coloursLabel} choices={colours} /> : null}
    </div>
  );
}

function Choices({ label, choices }: { label: string; choices: readonly DrawnChoice[] }) {
  return (
    <nav aria-label={label} className={styles.choices}>
      {choices.map(({ key, words, href, isChosen, hex }) => (
        <Link
          key={key}
          href={href}
          prefetch={false}
          scroll={false}
          aria-current={isChosen ? 'true' : undefined}
          className={styles.choice}
        >
          {hex ? (
            <svg viewBox="0 0 16 16" aria-hidden="true" className={styles.swatch}>
              <rect width="16" height="16" fill={hex} />
            </svg>
          ) : null}
          {words}
        </Link>
      ))}
    </nav>
  );
}
