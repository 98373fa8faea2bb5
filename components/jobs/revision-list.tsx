import Link from 'next/link';
import { Card } from '../ui/card';
import { classNames } from '../ui/class-names';
import styles from './revision-list.module.css';

/** An answer in words ready to show. */
export type ShownAnswer = {
  key: string;
  word: 'yes' | 'change';
  /** `Yes from Wren Okafor` */
  said: string;
  /** How and when. */
  how: string;
  /** Said of an answer the maker recorded. */
  weaker: string | null;
  /** What they want changed, quoted. */
  quote: string | null;
};

/** A revision of the job, in words ready to show. */
export type ShownRevision = {
  revisionId: string;
  href: string;
  name: string;
  sent: string;
  /** `current, signed off` */
  standing: string;
  tone: 'yes' | 'change' | 'open' | 'past';
  opened: string;
  answers: readonly ShownAnswer[];
  specification: { href: string; words: string } | null;
};

/** The revisions that were sent, newest first, with what came back. */
export function RevisionList({ revisions }: { revisions: readonly ShownRevision[] }) {
  return (
    <ol className={styles.list}>
      {revisions.map((revision) => (
        <Card key={revision.revisionId} as="li">
          <div className={styles.revision}>
            <h3 className={styles.name}>
              <Link href={revision.href} prefetch={false}>
                {revision.name}
              </Link>{' '}
              <span className={classNames(styles.standing, styles[revision.tone])}>{revision.standing}</span>
            </h3>
            <p className={styles.soft}>
              {revision.sent} · {revision.opened}
            </p>
            <AnswerList answers={revision.answers} />
            {revision.specification ? (
              <p>
                <Link href={revision.specification.href} prefetch={false}>
                  {revision.specification.words}
                </Link>
              </p>
            ) : null}
          </div>
        </Card>
      ))}
    </ol>
  );
}

/** What was answered to one revision, oldest first. */
export function AnswerList({ answers }: { answers: readonly ShownAnswer[] }) {
  if (answers.length === 0) return null;
  return (
    <ul className={styles.answers}>
      {answers.map((answer) => (
        <li key={answer.key} className={styles.answer}>
          <p>
            <strong className={answer.word === 'yes' ? styles.yes : styles.change}>{answer.said}</strong>
          </p>
          {answer.quote === null ? null : <p>{answer.quote}</p>}
          <p className={styles.soft}>
            {answer.how}
            {answer.weaker === null ? null : <span className={styles.weaker}> {answer.weaker}</span>}
          </p>
        </li>
      ))}
    </ul>
  );
}
