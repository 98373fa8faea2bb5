import type { ReactNode } from 'react';
import styles from './facts.module.css';

/** Names and values, one under another. */
export function Facts({ facts }: { facts: readonly { name: string; value: ReactNode }[] }) {
  return (
    <dl className={styles.facts}>
      {facts.map(({ name, value }) => (
        <div key={name} className={styles.fact}>
          <dt className={styles.name}>{name}</dt>
          <dd className={styles.value}>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
