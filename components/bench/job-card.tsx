import Link from 'next/link';
import type { ReactNode } from 'react';
import { Card } from '../ui/card';
import styles from './job-card.module.css';

type JobCardProps = {
  href: string;
  title: string;
  customerName: string;
  /** What happens next, in one sentence. */
  sentence: string;
  /** It waits on somebody else and little time is left. */
  isPressing: boolean;
  /** Its piece of tape. */
  tape: ReactNode;
};

/** A job on the bench: whose it is, what happens next, how long there is. The whole slip leads to it. */
export function JobCard({ href, title, customerName, sentence, isPressing, tape }: JobCardProps) {
  return (
    <Card as="li" edge={isPressing ? 'stop' : 'rule'}>
      <div className={styles.row}>
        <div className={styles.words}>
          <h3 className={styles.title}>
            <Link href={href} prefetch={false} className={styles.link}>
              {title}
            </Link>{' '}
            <span className={styles.customer}>{customerName}</span>
          </h3>
          <p className={styles.sentence}>{sentence}</p>
        </div>
        {tape}
      </div>
    </Card>
  );
}
