import { Card } from '../ui/card';
import { LinkButton } from '../ui/link-button';
import styles from './empty-blanks.module.css';

/** A list without blanks: what a blank is, and how to begin. */
export function EmptyBlanks({ title, text, begin }: { title: string; text: string; begin: string }) {
  return (
    <Card as="section" aria-labelledby="empty-title">
      <div className={styles.empty}>
        <h2 id="empty-title">{title}</h2>
        <p className={styles.text}>{text}</p>
        <div>
          <LinkButton kind="primary" href="/blanks/new">
            {begin}
          </LinkButton>
        </div>
      </div>
    </Card>
  );
}
