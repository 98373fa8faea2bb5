import type { ReactNode } from 'react';
import styles from './disclosure.module.css';

type DisclosureProps = {
  summary: ReactNode;
  children: ReactNode;
  /** Shown from the start. */
  open?: boolean;
  id?: string;
};

/** Something to open when it is wanted; works without scripts. */
export function Disclosure({ summary, children, open, id }: DisclosureProps) {
  return (
    <details id={id} open={open} className={styles.disclosure}>
      <summary className={styles.summary}>{summary}</summary>
      <div className={styles.inside}>{children}</div>
    </details>
  );
}
