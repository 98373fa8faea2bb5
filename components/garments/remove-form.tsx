'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import styles from './garment-forms.module.css';
import { garmentRefusal } from './refusal-words';

type RemoveFormProps = {
  name: string;
  /** How many prints are on this garment and on no other. */
  printsThatGo: number;
  action: FormAction;
};

/** Says what goes with a garment, then removes it. */
export function RemoveForm({ name, printsThatGo, action }: RemoveFormProps) {
  const t = useTranslations('garments');
  const [state, send] = useActionState(action, unsent());
  return (
    <form action={send} className={styles.form}>
      <FormProblems state={state} title={null} mistakes={[]} refusal={garmentRefusal(t, state)} />
      <p>{t('remove.text', { prints: printsThatGo })}</p>
      <div>
        <SubmitButton kind="stop" waiting={t('remove.waiting')}>
          {t('remove.submit', { name })}
        </SubmitButton>
      </div>
    </form>
  );
}
