import type { ReactNode } from 'react';
import styles from './blank-columns.module.css';

/** The flat beside what is known of the blank. */
export function BlankColumns({ drawing, facts }: { drawing: ReactNode; facts: ReactNode }) {
  return (
    <div className={styles.columns}>
      <div className={styles.drawing}>{drawing}</div>
      <div>{facts}</div>
    </div>
  );
}
