import { Card } from '../ui/card';
import { LinkButton } from '../ui/link-button';
import styles from './empty-bench.module.css';

/** A bench without jobs: what a job is, and how to begin. */
export function EmptyBench({ title, text, newJob }: { title: string; text: string; newJob: string }) {
  return (
    <Card as="section" aria-labelledby="empty-title">
      <div className={styles.empty}>
        <h2 id="empty-title">{title}</h2>
        <p className={styles.text}>{text}</p>
        <div>
          <LinkButton kind="primary" href="/jobs/new">
            {newJob}
          </LinkButton>
        </div>
      </div>
    </Card>
  );
}
