import type { ReactNode } from 'react';
import styles from './font-list.module.css';

/** Fonts one under another. */
export function FontList({ name, children }: { name: string; children: ReactNode }) {
  return (
    <ul aria-label={name} className={styles.list}>
      {children}
    </ul>
  );
}
