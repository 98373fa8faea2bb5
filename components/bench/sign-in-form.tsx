'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { PasswordField } from '../ui/password-field';
import { SubmitButton } from '../ui/submit-button';
import { TextField } from '../ui/text-field';
import { useMistakes } from '../ui/use-mistakes';
import styles from './form.module.css';

/** Whole-form refusals of signing in. */
export type SignInRefusal = 'wrong' | 'tooMany';

/** Mail address and password. */
export function SignInForm({ action }: { action: FormAction }) {
  const t = useTranslations('bench.signIn');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent());
  const mistakes = useMistakes(t, state);
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems
        state={state}
        title={form('fix')}
        mistakes={mistakes.all}
        refusal={
          state.refusal === null
            ? null
            : t(`refusal.${state.refusal as SignInRefusal}`, { minutes: Number(state.detail?.minutes ?? 1) })
        }
      />
      <TextField
        name="email"
        type="email"
        label={t('email')}
        error={mistakes.of('email')}
        defaultValue={state.typed.email}
        autoComplete="username"
        autoCapitalize="none"
        required
      />
      <PasswordField
        name="password"
        label={t('password')}
        error={mistakes.of('password')}
        show={t('show')}
        hide={t('hide')}
        autoComplete="current-password"
        required
      />
      <div>
        <SubmitButton kind="primary" waiting={t('waiting')}>
          {t('submit')}
        </SubmitButton>
      </div>
    </form>
  );
}
