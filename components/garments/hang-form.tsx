'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SelectField, type SelectOption } from '../ui/select-field';
import { SubmitButton } from '../ui/submit-button';
import styles from './garment-forms.module.css';
import { garmentRefusal } from './refusal-words';

type HangFormProps = { garmentId: string; action: FormAction; options: readonly SelectOption[] };

/** Hangs more sizes under a garment: another age band or another style of its kind. */
export function HangForm({ garmentId, action, options }: HangFormProps) {
  const t = useTranslations('garments');
  const [state, send] = useActionState(action, unsent());
  return (
    <form action={send} className={styles.one}>
      <FormProblems state={state} title={null} mistakes={[]} refusal={garmentRefusal(t, state)} />
      <div className={styles.withButton}>
        <SelectField
          id={`${garmentId}-hang`}
          name="style"
          label={t('hang.style')}
          hint={t('hang.hint')}
          defaultValue={state.typed.style}
          options={options}
        />
        <SubmitButton waiting={t('hang.waiting')}>{t('hang.submit')}</SubmitButton>
      </div>
    </form>
  );
}
