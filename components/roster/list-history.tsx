import styles from './list-history.module.css';

/** One change to the list in words: who and whom, when, and what it said before and after. */
export type ShownChange = {
  readonly key: string;
  readonly what: string;
  readonly when: string;
  readonly details: readonly string[];
};

/** The latest changes to a list, newest first. */
export function ListHistory({ changes, none }: { changes: readonly ShownChange[]; none: string }) {
  if (changes.length === 0) return <p>{none}</p>;
  return (
    <ol className={styles.list}>
      {changes.map(({ key, what, when, details }) => (
        <li key={key} className={styles.change}>
          <span>{what}</span>
          <span className={styles.when}>{when}</span>
          {details.map((detail) => (
            <span key={detail} className={styles.detail}>
              {detail}
            </span>
          ))}
        </li>
      ))}
    </ol>
  );
}
