'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import type { StyleColour } from '@/lib/domain/garment/blank-style';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import { TextField } from '../ui/text-field';
import { useMistakes } from '../ui/use-mistakes';
import { ClothChoice } from './cloth-choice';
import styles from './garment-forms.module.css';
import { garmentRefusal } from './refusal-words';

type StyleFormProps = {
  garmentId: string;
  action: FormAction;
  typed: Readonly<Record<string, string>>;
  colours: readonly StyleColour[];
  secondCloth: string | null;
};

/** What a garment is called and which cloth it is of. */
export function StyleForm({ garmentId, action, typed, colours, secondCloth }: StyleFormProps) {
  const t = useTranslations('garments');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent(typed));
  const mistakes = useMistakes(t, state, (field) => `${garmentId}-${field}`);
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems state={state} title={form('fix')} mistakes={mistakes.all} refusal={garmentRefusal(t, state)} />
      <TextField
        id={`${garmentId}-name`}
        name="name"
        label={t('style.name')}
        hint={t('style.nameHint')}
        error={mistakes.of('name')}
        defaultValue={state.typed.name}
        maxLength={80}
        required
      />
      <ClothChoice
        formId={garmentId}
        typed={state.typed}
        mistakes={mistakes}
        colours={colours}
        secondCloth={secondCloth}
      />
      <div className={styles.end}>
        <SubmitButton waiting={t('style.waiting')}>{t('style.submit')}</SubmitButton>
        <span role="status" className={styles.kept}>
          {state.done ? `✓ ${t('style.kept')}` : null}
        </span>
      </div>
    </form>
  );
}
