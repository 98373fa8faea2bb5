import type { ReactNode } from 'react';
import { buttonClass } from '../ui/button';
import styles from './reach-person.module.css';

/** Ways to reach people, side by side where there is room. */
export function ReachPair({ children }: { children: ReactNode }) {
  return <div className={styles.pair}>{children}</div>;
}

/** Ways to reach one person, or one way in words and deeds. */
export function ReachPerson({ title, text, children }: { title?: string; text?: string; children: ReactNode }) {
  return (
    <div className={styles.person}>
      {title ? <h3>{title}</h3> : null}
      {text ? <p className={styles.text}>{text}</p> : null}
      {children}
    </div>
  );
}

/** Opens a text message with its words filled in. */
export function TextMessage({ href, words, hint }: { href: string; words: string; hint: string }) {
  return (
    <div className={styles.message}>
      <a href={href} className={buttonClass({})}>
        {words}
      </a>
      <p className={styles.hint}>{hint}</p>
    </div>
  );
}
