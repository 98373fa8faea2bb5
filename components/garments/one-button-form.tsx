'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import type { ButtonKind } from '../ui/button';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import styles from './garment-forms.module.css';
import { garmentRefusal } from './refusal-words';

type OneButtonFormProps = { action: FormAction; words: string; waiting: string; kind?: ButtonKind };

/** One thing to do with a garment, with nothing to fill in. */
export function OneButtonForm({ action, words, waiting, kind = 'secondary' }: OneButtonFormProps) {
  const t = useTranslations('garments');
  const [state, send] = useActionState(action, unsent());
  return (
    <form action={send} className={styles.one}>
      <FormProblems state={state} title={null} mistakes={[]} refusal={garmentRefusal(t, state)} />
      <div>
        <SubmitButton kind={kind} waiting={waiting}>
          {words}
        </SubmitButton>
      </div>
    </form>
  );
}
