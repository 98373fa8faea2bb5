import type { ReactNode } from 'react';
import styles from './art-link-live.module.css';

/** A link that is open for the customer's art, its ways to the customer one under another. */
export function ArtLinkLive({ children }: { children: ReactNode }) {
  return <div className={styles.live}>{children}</div>;
}
