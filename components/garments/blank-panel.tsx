import type { ReactNode } from 'react';
import styles from './blank-panel.module.css';

type BlankPanelProps = {
  /** `Youth sizes` */
  title: string;
  /** Where its chart is from. */
  source: ReactNode;
  chart: ReactNode;
  /** What is different in the shop's chart by now, in lines, and the button that takes it; null where nothing is. */
  changes: { title: string; lines: readonly string[]; take: ReactNode } | null;
  /** The button that takes its sizes off; null where they have to stay. */
  takeDown: ReactNode;
};

/** One blank of a garment: its chart, where that is from, and what became of it since. */
export function BlankPanel({ title, source, chart, changes, takeDown }: BlankPanelProps) {
  return (
    <section className={styles.panel}>
      <div className={styles.head}>
        <h4 className={styles.title}>{title}</h4>
        <p className={styles.source}>{source}</p>
      </div>
      {changes ? (
        <div className={styles.changes}>
          <p>{changes.title}</p>
          <ul className={styles.lines}>
            {changes.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          {changes.take}
        </div>
      ) : null}
      {chart}
      {takeDown ? <div className={styles.takeDown}>{takeDown}</div> : null}
    </section>
  );
}
