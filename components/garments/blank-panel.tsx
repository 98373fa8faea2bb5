import type { ReactNode } from 'react';
import styles from './blank-panel.module.css';

type BlankPanelProps = {
  /** `Youth sizes` */
  title: string;
  /** Where its chart is from. */
  source: ReactNode;
  chart: ReactNode;
  /** What is different in the shop's chart by now, in lines; null where nothing is. */
  changes: readonly string[] | null;
  changesTitle: string;
  /** What can be done with it. */
  actions: ReactNode;
};

/** One blank of a garment: its chart, where that is from, and what became of it since. */
export function BlankPanel({ title, source, chart, changes, changesTitle, actions }: BlankPanelProps) {
  return (
    <section className={styles.panel}>
      <div className={styles.head}>
        <h4 className={styles.title}>{title}</h4>
        <p className={styles.source}>{source}</p>
      </div>
      {chart}
      {changes ? (
        <div className={styles.changes}>
          <p>{changesTitle}</p>
          <ul className={styles.lines}>
            {changes.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      ) : null}
      {actions ? <div className={styles.actions}>{actions}</div> : null}
    </section>
  );
}
