import { FormNotice } from '@/components/ui/form-notice';
import styles from './sheet-head.module.css';
import type { SheetWords, TopWords } from './sheet-words';

type SheetHeadProps = { words: Pick<SheetWords, 'shop' | 'title' | 'whose' | 'top'> };

/** Whose order it is, which look, and the one thing to do: answer, with a way straight to it. */
export function SheetHead({ words: { shop, title, whose, top } }: SheetHeadProps) {
  return (
    <header className={styles.head}>
      <p className={styles.shop}>{shop}</p>
      <h1>{title}</h1>
      <details className={styles.whose}>
        <summary>
          {`${whose.forWhom} `}
          <span>{whose.notYou}</span>
        </summary>
        <p>{whose.text}</p>
      </details>
      <Top top={top} />
    </header>
  );
}

function Top({ top: { kind, title, text, needed, link } }: { top: TopWords }) {
  const straight = link ? (
    <a href={link.href} className={styles.straight}>
      {link.text}
    </a>
  ) : null;
  if (kind !== 'ask') {
    return (
      <FormNotice kind={kind} title={title}>
        {text ? <p>{text}</p> : null}
        {straight}
      </FormNotice>
    );
  }
  return (
    <div className={styles.ask}>
      <p>{title}</p>
      {needed ? (
        <p>
          {`${needed.before} `}
          <strong>{needed.moment}</strong>
        </p>
      ) : null}
      {straight}
    </div>
  );
}
