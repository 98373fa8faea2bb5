'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import styles from './photograph-choice.module.css';

type PhotographChoiceProps = {
  /** What the customer can look at now, side by side; null while the drawing alone is shown. */
  shown: string | null;
  /** What the shop has that is not shown like that yet; null where there is nothing new. */
  offered: string | null;
  use: FormAction;
  stop: FormAction;
};

/** Whether the customer can look at a garment on the shop's photograph, beside the drawing. */
export function PhotographChoice({ shown, offered, use, stop }: PhotographChoiceProps) {
  const t = useTranslations('photographs.job');
  return (
    <div className={styles.choice}>
      <p>{shown === null ? t('offer', { what: offered ?? '' }) : t('shown', { what: shown })}</p>
      <div className={styles.buttons}>
        {offered === null ? null : <OneButton action={use} words={shown === null ? t('use') : t('again')} />}
        {shown === null ? null : <OneButton action={stop} words={t('stop')} />}
      </div>
    </div>
  );
}

function OneButton({ action, words }: { action: FormAction; words: string }) {
  const t = useTranslations('photographs.job');
  const [state, send] = useActionState(action, unsent());
  const refusal = state.refusal as 'locked' | 'noJob' | 'noGarment' | null;
  return (
    <form action={send}>
      <FormProblems state={state} title={null} mistakes={[]} refusal={refusal && t(`refused.${refusal}`)} />
      <SubmitButton waiting={t('using')}>{words}</SubmitButton>
    </form>
  );
}
