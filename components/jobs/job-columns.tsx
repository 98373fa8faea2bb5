import type { ReactNode } from 'react';
import { classNames } from '../ui/class-names';
import styles from './job-columns.module.css';

type JobColumnsProps = {
  main: ReactNode;
  aside: ReactNode;
  /** The narrow side holds a form. */
  broadAside?: boolean;
};

/** Two columns: what is made or shown on the wide side, what is done about it or known of it on the narrow one. */
export function JobColumns({ main, aside, broadAside = false }: JobColumnsProps) {
  return (
    <div className={classNames(styles.columns, broadAside && styles.broadAside)}>
      <div className={styles.column}>{main}</div>
      <div className={styles.column}>{aside}</div>
    </div>
  );
}
