'use client';

import { useActionState, useSyncExternalStore } from 'react';
import { useTranslations } from 'use-intl';
import { CheckField } from '../ui/check-field';
import { FieldGroup } from '../ui/field-group';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { PasswordField } from '../ui/password-field';
import { SelectField, type SelectOption } from '../ui/select-field';
import { SubmitButton } from '../ui/submit-button';
import { TextField } from '../ui/text-field';
import { useMistakes } from '../ui/use-mistakes';
import styles from './form.module.css';

/** Whole-form refusals of setting up. */
export type SetUpRefusal = 'ownerExists' | 'tooMany';

type SetUpFormProps = {
  action: FormAction;
  timeZones: readonly SelectOption[];
  /** The first one asks to choose. */
  currencies: readonly SelectOption[];
  leastPasswordLength: number;
};

const neverChanges = () => () => undefined;

/** The browser's own time zone; empty while the page is still the server's. */
function useBrowserTimeZone(): string {
  return useSyncExternalStore(
    neverChanges,
    () => Intl.DateTimeFormat().resolvedOptions().timeZone,
    () => '',
  );
}

/** The shop and its owner, asked once. */
export function SetUpForm({ action, timeZones, currencies, leastPasswordLength }: SetUpFormProps) {
  const t = useTranslations('set-up');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent({ unit: 'in' }));
  const guess = useBrowserTimeZone();
  const mistakes = useMistakes(t, state);
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems
        state={state}
        title={form('fix')}
        mistakes={mistakes.all}
        refusal={state.refusal === null ? null : t(`refusal.${state.refusal as SetUpRefusal}`)}
      />
      <TextField
        name="code"
        label={t('code')}
        hint={t('codeHint')}
        error={mistakes.of('code')}
        defaultValue={state.typed.code}
        width="middle"
        characters
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        required
      />
      <section aria-labelledby="shop" className={styles.group}>
        <h2 id="shop">{t('shop')}</h2>
        <TextField
          name="name"
          label={t('name')}
          hint={t('nameHint')}
          error={mistakes.of('name')}
          defaultValue={state.typed.name}
          autoComplete="organization"
          required
        />
        <FieldGroup inline id="unit" label={t('unit')} hint={t('unitHint')} error={mistakes.of('unit')}>
          <CheckField
            type="radio"
            name="unit"
            value="in"
            label={t('inches')}
            defaultChecked={state.typed.unit !== 'cm'}
          />
          <CheckField
            type="radio"
            name="unit"
            value="cm"
            label={t('centimetres')}
            defaultChecked={state.typed.unit === 'cm'}
          />
        </FieldGroup>
        <SelectField
          name="timeZone"
          label={t('timeZone')}
          hint={t('timeZoneHint')}
          error={mistakes.of('timeZone')}
          options={timeZones}
          defaultValue={state.typed.timeZone ?? (guess || 'UTC')}
        />
        <SelectField
          name="currency"
          label={t('currency')}
          error={mistakes.of('currency')}
          options={currencies}
          defaultValue={state.typed.currency ?? ''}
        />
        <TextField
          name="phone"
          type="tel"
          label={t('phone')}
          hint={t('phoneHint')}
          error={mistakes.of('phone')}
          defaultValue={state.typed.phone}
          width="middle"
          autoComplete="tel"
        />
      </section>
      <section aria-labelledby="owner" className={styles.group}>
        <h2 id="owner">{t('owner')}</h2>
        <TextField
          name="ownerName"
          label={t('ownerName')}
          error={mistakes.of('ownerName')}
          defaultValue={state.typed.ownerName}
          autoComplete="name"
          required
        />
        <TextField
          name="email"
          type="email"
          label={t('email')}
          hint={t('emailHint')}
          error={mistakes.of('email')}
          defaultValue={state.typed.email}
          autoComplete="username"
          autoCapitalize="none"
          required
        />
        <PasswordField
          name="password"
          label={t('password')}
          hint={t('passwordHint', { count: leastPasswordLength })}
          error={mistakes.of('password')}
          show={t('show')}
          hide={t('hide')}
          autoComplete="new-password"
          required
        />
      </section>
      <div>
        <SubmitButton kind="primary" waiting={t('waiting')}>
          {t('submit')}
        </SubmitButton>
      </div>
    </form>
  );
}
