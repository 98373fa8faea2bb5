import { Disclosure } from '../ui/disclosure';
import styles from './history-list.module.css';

type HistoryEntry = { seq: number; when: string; what: string };

/** How many entries are shown before the rest has to be opened. */
const SHOWN = 6;

type HistoryListProps = {
  /** Newest first. */
  entries: readonly HistoryEntry[];
  /** Opens the rest: `4 earlier entries`. */
  earlier: (count: number) => string;
};

/** The job's record, newest first. */
export function HistoryList({ entries, earlier }: HistoryListProps) {
  const rest = entries.slice(SHOWN);
  return (
    <div>
      <Entries entries={entries.slice(0, SHOWN)} />
      {rest.length > 0 ? (
        <Disclosure summary={earlier(rest.length)}>
          <Entries entries={rest} />
        </Disclosure>
      ) : null}
    </div>
  );
}

function Entries({ entries }: { entries: readonly HistoryEntry[] }) {
  return (
    <ol className={styles.list}>
      {entries.map(({ seq, when, what }) => (
        <li key={seq} className={styles.entry}>
          <span>{what}</span>
          <span className={styles.when}>{when}</span>
        </li>
      ))}
    </ol>
  );
}
