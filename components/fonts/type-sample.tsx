import styles from './type-sample.module.css';

export type TypeSampleProps = {
  /** Outlines, and the box around them, in one unit. */
  d: string;
  viewBox: string;
  /** What it says and in which font. */
  title: string;
};

/** A few letters set in a font, drawn as their outlines: the page itself has no such font. */
export function TypeSample({ d, viewBox, title }: TypeSampleProps) {
  return (
    <svg role="img" aria-label={title} viewBox={viewBox} preserveAspectRatio="xMinYMid meet" className={styles.sample}>
      <path d={d} />
    </svg>
  );
}
