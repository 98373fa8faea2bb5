import type { ReactNode } from 'react';
import styles from './job-columns.module.css';

/** The job's page: what is made on the wide side, who and what came back on the narrow one. */
export function JobColumns({ main, aside }: { main: ReactNode; aside: ReactNode }) {
  return (
    <div className={styles.columns}>
      <div className={styles.column}>{main}</div>
      <div className={styles.column}>{aside}</div>
    </div>
  );
}
