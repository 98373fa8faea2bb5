import { Fragment } from 'react';
import styles from './answer-given.module.css';
import type { GivenWords } from './given-words';

/** What was answered, to exactly what, when and by whom, and what happens next. */
export function AnswerGiven({ words: { word, title, quote, facts, nextTitle, next } }: { words: GivenWords }) {
  return (
    <div className={word === 'yes' ? styles.yes : styles.change}>
      <h3>{title}</h3>
      {quote ? (
        <figure className={styles.words}>
          <figcaption>{quote.title}</figcaption>
          <blockquote>{quote.text}</blockquote>
        </figure>
      ) : null}
      <dl className={styles.facts}>
        {facts.map(({ term, text }) => (
          <Fragment key={term}>
            <dt>{term}</dt>
            <dd>{text}</dd>
          </Fragment>
        ))}
      </dl>
      <h4>{nextTitle}</h4>
      {next.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}
