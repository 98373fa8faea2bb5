import type { ReactNode } from 'react';
import { classNames } from './class-names';
import styles from './form-notice.module.css';

/** stop: nothing was done, and why. look: done, with something to know. done: done. note: for your information. */
export type NoticeKind = 'stop' | 'look' | 'done' | 'note';

export type FieldMistake = { fieldId: string; text: string };

type FormNoticeProps = {
  kind: NoticeKind;
  title: ReactNode;
  /** Each leads to its field. */
  mistakes?: readonly FieldMistake[];
  children?: ReactNode;
  id?: string;
};

const marks: Record<NoticeKind, string> = { stop: '!', look: '△', done: '✓', note: 'i' };

/** What came of a form, above it: read out by a screen reader as it appears, and never told by colour alone. */
export function FormNotice({ kind, title, mistakes = [], children, id }: FormNoticeProps) {
  return (
    <div
      id={id}
      role={kind === 'stop' ? 'alert' : 'status'}
      tabIndex={-1}
      className={classNames(styles.notice, styles[kind])}
    >
      <span aria-hidden="true" className={styles.mark}>
        {marks[kind]}
      </span>
      <div className={styles.words}>
        <p className={styles.title}>{title}</p>
        {mistakes.length > 0 ? (
          <ul className={styles.mistakes}>
            {mistakes.map((mistake) => (
              <li key={mistake.fieldId}>
                <a href={`#${mistake.fieldId}`}>{mistake.text}</a>
              </li>
            ))}
          </ul>
        ) : null}
        {children}
      </div>
    </div>
  );
}
