import styles from './cautions.module.css';

/** What to mind before pressing, and that these are reminders. */
export function Cautions({ cautions, reminder }: { cautions: readonly string[]; reminder: string }) {
  return (
    <div className={styles.cautions}>
      <ul className={styles.list}>
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <p className={styles.reminder}>{reminder}</p>
    </div>
  );
}
