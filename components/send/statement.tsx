import styles from './statement.module.css';

/** Somebody's words as they stand: what is agreed to, a note. */
export function Statement({ title, children }: { title: string; children: string }) {
  return (
    <figure className={styles.statement}>
      <figcaption className={styles.title}>{title}</figcaption>
      <blockquote className={styles.words}>{children}</blockquote>
    </figure>
  );
}
