import type { ReactNode } from 'react';
import styles from './job-group.module.css';

type JobGroupProps = {
  id: string;
  title: string;
  /** Said where the group is empty. */
  none: string;
  children: readonly ReactNode[];
};

/** The jobs whose next step is the maker's, or somebody else's. */
export function JobGroup({ id, title, none, children }: JobGroupProps) {
  return (
    <section aria-labelledby={id} className={styles.group}>
      <h2 id={id}>{title}</h2>
      {children.length > 0 ? <ul className={styles.jobs}>{children}</ul> : <p className={styles.none}>{none}</p>}
    </section>
  );
}
