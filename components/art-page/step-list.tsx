import type { ReactNode } from 'react';
import { useTranslations } from 'use-intl';
import type { MendBench } from './mend-bench';
import styles from './step-list.module.css';
import { stepWords } from './step-words';

type StepListProps = {
  bench: MendBench;
  onUndo: () => void;
  onRedo: () => void;
  onBackTo: (count: number) => void;
};

/** What was done to the picture, in order; every step can be taken back. The original stands first. */
export function StepList({ bench: { steps, undone }, onUndo, onRedo, onBackTo }: StepListProps) {
  const t = useTranslations('art-page.steps');
  const words = useTranslations('art-page.step');
  return (
    <section aria-labelledby="steps-title" className={styles.steps}>
      <div className={styles.head}>
        <h2 id="steps-title" className={styles.title}>
          {t('title')}
        </h2>
        <div className={styles.acts}>
          <Act isOff={steps.length === 0} onPress={onUndo}>
            {t('undo')}
          </Act>
          <Act isOff={undone.length === 0} onPress={onRedo}>
            {t('redo')}
          </Act>
        </div>
      </div>
      <ol className={styles.list} aria-label={t('title')}>
        <li className={styles.step}>
          <span>{t('original')}</span>
          {steps.length > 0 ? (
            <button type="button" className={styles.back} onClick={() => onBackTo(0)}>
              {t('backToOriginal')}
            </button>
          ) : null}
        </li>
        {steps.map((step, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a step is known by its place, the same one may come twice
          <li key={index} className={styles.step}>
            <span>{stepWords(words, step)}</span>
            {index < steps.length - 1 ? (
              <button
                type="button"
                className={styles.back}
                aria-label={t('backToHere', { number: index + 1 })}
                onClick={() => onBackTo(index + 1)}
              >
                {t('backTo')}
              </button>
            ) : null}
          </li>
        ))}
      </ol>
      {undone.length > 0 ? <p className={styles.undone}>{t('undone', { count: undone.length })}</p> : null}
    </section>
  );
}

/** Stays where it is when there is nothing to do, so that whoever presses it again does not lose their place. */
function Act({ isOff, onPress, children }: { isOff: boolean; onPress: () => void; children: ReactNode }) {
  return (
    <button
      type="button"
      className={styles.back}
      aria-disabled={isOff || undefined}
      onClick={() => {
        if (!isOff) onPress();
      }}
    >
      {children}
    </button>
  );
}
