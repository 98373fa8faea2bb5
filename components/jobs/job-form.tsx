'use client';

import { type ReactNode, useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import { TextArea } from '../ui/text-area';
import { TextField } from '../ui/text-field';
import { useMistakes } from '../ui/use-mistakes';
import styles from './job-form.module.css';

type JobFormProps = {
  action: FormAction;
  /** What the fields begin with, by name. */
  typed: Readonly<Record<string, string>>;
  /** The shop's time zone, as it is said beside the date. */
  zone: string;
  submit: string;
  waiting: string;
  /** A way out beside the button. */
  aside?: ReactNode;
};

/** Who a job is for, what it is for, when it is needed. */
export function JobForm({ action, typed, zone, submit, waiting, aside }: JobFormProps) {
  const t = useTranslations('jobs.form');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent(typed));
  const mistakes = useMistakes(t, state);
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems
        state={state}
        title={form('fix')}
        mistakes={mistakes.all}
        refusal={state.refusal === null ? null : t('refusal.noJob')}
      />
      <div className={styles.halves}>
        <section aria-labelledby="customer" className={styles.fields}>
          <h2 id="customer">{t('customer')}</h2>
          <TextField
            name="customerName"
            label={t('customerName')}
            hint={t('customerNameHint')}
            error={mistakes.of('customerName')}
            defaultValue={state.typed.customerName}
            autoComplete="off"
            required
          />
          <TextField
            name="customerEmail"
            type="email"
            label={t('customerEmail')}
            hint={t('customerEmailHint')}
            error={mistakes.of('customerEmail')}
            defaultValue={state.typed.customerEmail}
            autoComplete="off"
            autoCapitalize="none"
          />
          <TextField
            name="customerPhone"
            type="tel"
            label={t('customerPhone')}
            hint={t('customerPhoneHint')}
            error={mistakes.of('customerPhone')}
            defaultValue={state.typed.customerPhone}
            width="middle"
            autoComplete="off"
          />
        </section>
        <section aria-labelledby="job" className={styles.fields}>
          <h2 id="job">{t('job')}</h2>
          <TextField
            name="title"
            label={t('titleField')}
            hint={t('titleHint')}
            error={mistakes.of('title')}
            defaultValue={state.typed.title}
            autoComplete="off"
            required
          />
          <TextField
            name="neededBy"
            type="datetime-local"
            label={t('neededBy')}
            hint={t('neededByHint', { zone })}
            error={mistakes.of('neededBy')}
            defaultValue={state.typed.neededBy}
            width="middle"
            required
          />
          <TextArea
            name="notes"
            label={t('notes')}
            hint={t('notesHint')}
            error={mistakes.of('notes')}
            defaultValue={state.typed.notes}
          />
        </section>
      </div>
      <div className={styles.end}>
        <SubmitButton kind="primary" waiting={waiting}>
          {submit}
        </SubmitButton>
        {aside}
      </div>
    </form>
  );
}
