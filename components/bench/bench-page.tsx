import type { ReactNode } from 'react';
import styles from './bench-page.module.css';

/** What stands under the bench's header: one page, top to bottom. */
export function BenchPage({ children }: { children: ReactNode }) {
  return (
    <main id="page" tabIndex={-1} className={styles.page}>
      {children}
    </main>
  );
}
