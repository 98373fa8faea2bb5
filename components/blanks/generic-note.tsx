import styles from './generic-note.module.css';

/** Said wherever a starter chart is used: it is generic. */
export function GenericNote({ text }: { text: string }) {
  return (
    <p className={styles.note}>
      <span aria-hidden="true" className={styles.mark}>
        △
      </span>
      {text}
    </p>
  );
}
