import { FormNotice } from '@/components/ui/form-notice';
import styles from './refused-notice.module.css';
import type { RefusedWords } from './refused-words';

/** Says that an answer was not taken, why, and what to do; it leads to the field that has to be put right. */
export function RefusedNotice({ words: { title, sentence, fieldId, typed } }: { words: RefusedWords }) {
  return (
    <FormNotice kind="stop" title={title} mistakes={fieldId ? [{ fieldId, text: sentence }] : []}>
      {fieldId ? null : <p>{sentence}</p>}
      {typed ? (
        <div className={styles.typed}>
          <p>{typed.title}</p>
          <blockquote>{typed.text}</blockquote>
        </div>
      ) : null}
    </FormNotice>
  );
}
