import { type FormEvent, useId, useState } from 'react';
import { LONGEST_REASON } from '@/lib/domain/people/list';
import type { ListCheck } from '@/lib/domain/people/list-check';
import styles from './check-line.module.css';
import type { PeopleWords } from './roster-words';

export type CheckAct = { readonly words: string; readonly act: () => void };

type CheckLineProps = {
  id: string;
  t: PeopleWords;
  check: ListCheck;
  /** The column it is about; null where the sentence says so. */
  place: string | null;
  sentence: string;
  acts: readonly CheckAct[];
  readOnly: boolean;
  onMeant: (why: string | null) => void;
};

/** One finding: what it is, what would mend it, and why it is meant so where it is. */
export function CheckLine({ id, t, check, place, sentence, acts, readOnly, onMeant }: CheckLineProps) {
  const [isAsking, setAsking] = useState(false);
  const fieldId = useId();
  const keep = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const why = String(new FormData(event.currentTarget).get('why') ?? '').trim();
    if (why === '') return;
    onMeant(why);
    setAsking(false);
  };
  return (
    <div className={check.meant === null ? styles.open : styles.meant}>
      <p id={id} className={styles.sentence}>
        <span aria-hidden="true" className={styles.mark}>
          {check.meant === null ? '△' : '✓'}
        </span>
        {place === null ? null : <b className={styles.place}>{place}: </b>}
        {check.meant === null ? sentence : `${sentence} ${t('act.isMeant', { why: check.meant })}`}
      </p>
      {readOnly ? null : (
        <div className={styles.acts}>
          {check.meant === null
            ? acts.map(({ words, act }) => (
                <button key={words} type="button" className={styles.act} onClick={act}>
                  {words}
                </button>
              ))
            : null}
          {check.meant === null && !isAsking ? (
            <button type="button" className={styles.quiet} onClick={() => setAsking(true)}>
              {t('act.meant')}…
            </button>
          ) : null}
          {check.meant === null ? null : (
            <button type="button" className={styles.quiet} onClick={() => onMeant(null)}>
              {t('act.takeBack')}
            </button>
          )}
          {isAsking ? (
            <form className={styles.why} onSubmit={keep}>
              <label htmlFor={fieldId}>{t('act.meantWhy')}</label>
              <input
                id={fieldId}
                name="why"
                required
                maxLength={LONGEST_REASON}
                autoComplete="off"
                placeholder={t('act.meantHint')}
                // It appears where it was asked for, in place of the button that was pressed.
                autoFocus
                onKeyDown={(event) => (event.key === 'Escape' ? setAsking(false) : undefined)}
              />
              <button type="submit" className={styles.act}>
                {t('act.keep')}
              </button>
              <button type="button" className={styles.quiet} onClick={() => setAsking(false)}>
                {t('act.cancel')}
              </button>
            </form>
          ) : null}
        </div>
      )}
    </div>
  );
}
