'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import { TextField } from '../ui/text-field';
import { useMistakes } from '../ui/use-mistakes';
import styles from './job-form.module.css';

/** Whole-form refusals of opening a job for changes. */
export type ReopenRefusal = 'noJob' | 'notSignedOff';

/** Opens a signed-off job for changes, with a reason for the record. */
export function ReopenForm({ action, number }: { action: FormAction; number: number }) {
  const t = useTranslations('jobs.reopen');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent());
  const mistakes = useMistakes(t, state);
  return (
    <form action={send} noValidate className={styles.fields}>
      <FormProblems
        state={state}
        title={form('fix')}
        mistakes={mistakes.all}
        refusal={state.refusal === null ? null : t(`refusal.${state.refusal as ReopenRefusal}`)}
      />
      <p>{t('text', { number })}</p>
      <TextField
        name="reason"
        label={t('reason')}
        hint={t('reasonHint')}
        error={mistakes.of('reason')}
        defaultValue={state.typed.reason}
        width="full"
        maxLength={400}
        required
      />
      <div>
        <SubmitButton waiting={t('waiting')}>{t('submit')}</SubmitButton>
      </div>
    </form>
  );
}
