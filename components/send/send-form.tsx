'use client';

import { type ReactNode, useActionState } from 'react';
import { useTranslations } from 'use-intl';
import type { FitNoteMistake } from '@/lib/domain/revision/fit-notes';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, type FormState, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import { TextArea } from '../ui/text-area';
import { useMistakes } from '../ui/use-mistakes';
import { FitNoteFields } from './fit-note-fields';
import styles from './send-form.module.css';
import { printOfField, type StopToExplain } from './stop-to-explain';

/** Whole-form refusals of sending. */
export type SendFormRefusal =
  | 'noGarment'
  | 'noPrint'
  | 'noCounts'
  | 'locked'
  | 'changedElsewhere'
  | 'unchanged'
  | 'softPrints'
  | 'lettersMissing'
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
  /** Prints that are sent only with a word why they are meant so. */
  stops: readonly StopToExplain[];
  longestFitNote: number;
  /** What stands between the note and the button: the statement, where the mail goes. */
  children: ReactNode;
};

/** A note to the customer, and the button that seals and sends. */
export function SendForm({
  action,
  number,
  customerName,
  draftVersion,
  revisionId,
  stops,
  longestFitNote,
  children,
}: SendFormProps) {
  const t = useTranslations('send');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent());
  const mistakes = useMistakes(t, { mistakes: ownMistakes(state) });
  const fitMistakes = stops.flatMap(({ field, print }) => {
    const code = state.mistakes[field];
    return code ? [{ fieldId: field, text: t(`fitNote.mistake.${code as FitNoteMistake}`, { print }) }] : [];
  });
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems
        state={state}
        title={form('fix')}
        mistakes={[...fitMistakes, ...mistakes.all]}
        refusal={state.refusal === null ? null : t(`refusal.${state.refusal as SendFormRefusal}`)}
      />
      <input type="hidden" name="draftVersion" value={draftVersion} />
      <input type="hidden" name="revisionId" value={revisionId} />
      <FitNoteFields
        stops={stops}
        customerName={customerName}
        longest={longestFitNote}
        typed={state.typed}
        mistakeOf={(field) => fitMistakes.find(({ fieldId }) => fieldId === field)?.text}
      />
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

/** Mistakes in the notes on prints have words of their own. */
function ownMistakes({ mistakes }: Pick<FormState, 'mistakes'>): FormState['mistakes'] {
  return Object.fromEntries(Object.entries(mistakes).filter(([field]) => printOfField(field) === null));
}
