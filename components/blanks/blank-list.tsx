import type { ReactNode } from 'react';
import styles from './blank-list.module.css';

/** Blanks one under another. */
export function BlankList({ name, children }: { name: string; children: ReactNode }) {
  return (
    <ul aria-label={name} className={styles.list}>
      {children}
    </ul>
  );
}
