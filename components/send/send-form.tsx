'use client';

import { type ReactNode, useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import { TextArea } from '../ui/text-area';
import { useMistakes } from '../ui/use-mistakes';
import styles from './send-form.module.css';

/** Whole-form refusals of sending. */
export type SendFormRefusal =
  | 'noGarment'
  | 'noPrint'
  | 'noCounts'
  | 'locked'
  | 'changedElsewhere'
  | 'unchanged'
  | 'noJob'
  | 'noContact';

type SendFormProps = {
  action: FormAction;
  number: number;
  customerName: string;
  /** Which version of the working copy is looked at. */
  draftVersion: number;
  /** The id the revision will have, so that sending this form twice sends once. */
  revisionId: string;
  /** What stands between the note and the button: the statement, where the mail goes. */
  children: ReactNode;
};

/** A note to the customer, and the button that seals and sends. */
export function SendForm({ action, number, customerName, draftVersion, revisionId, children }: SendFormProps) {
  const t = useTranslations('send');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent());
  const mistakes = useMistakes(t, state);
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems
        state={state}
        title={form('fix')}
        mistakes={mistakes.all}
        refusal={state.refusal === null ? null : t(`refusal.${state.refusal as SendFormRefusal}`)}
      />
      <input type="hidden" name="draftVersion" value={draftVersion} />
      <input type="hidden" name="revisionId" value={revisionId} />
      <TextArea
        name="note"
        label={t('note', { customer: customerName })}
        hint={t('noteHint')}
        error={mistakes.of('note')}
        defaultValue={state.typed.note}
        rows={3}
      />
      {children}
      <div>
        <SubmitButton kind="primary" waiting={t('waiting')}>
          {t('submit', { number })}
        </SubmitButton>
      </div>
    </form>
  );
}
