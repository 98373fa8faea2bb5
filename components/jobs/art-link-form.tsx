import { SubmitButton } from '../ui/submit-button';
import styles from './art-link-form.module.css';

type ArtLinkFormProps = {
  action: () => Promise<void>;
  words: string;
  waiting: string;
  /** What pressing it does to the link that is there. */
  hint?: string;
};

/** One press that makes the customer's art link, or takes it back. */
export function ArtLinkForm({ action, words, waiting, hint }: ArtLinkFormProps) {
  return (
    <form action={action} className={styles.form}>
      <SubmitButton waiting={waiting}>{words}</SubmitButton>
      {hint ? <p className={styles.hint}>{hint}</p> : null}
    </form>
  );
}
