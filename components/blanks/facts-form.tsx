'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { FieldGroup } from '../ui/field-group';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import { TextArea } from '../ui/text-area';
import { TextField } from '../ui/text-field';
import { useMistakes } from '../ui/use-mistakes';
import styles from './blank-forms.module.css';
import { blankRefusalWords } from './blank-refusal-words';
import { BandChoice, NameAndFabric } from './facts-fields';
import { SeenField } from './seen-field';

type FactsFormProps = {
  action: FormAction;
  typed: Readonly<Record<string, string>>;
  seen: string;
  /** How cutting usually varies, in words. */
  usual: { across: string; long: string };
};

/** What is known of a blank besides its chart and colours. */
export function FactsForm({ action, typed, seen, usual }: FactsFormProps) {
  const t = useTranslations('blanks');
  const form = useTranslations('form');
  const facts = useTranslations('blanks.facts');
  const [state, send] = useActionState(action, unsent(typed));
  const mistakes = useMistakes(facts, state);
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems state={state} title={form('fix')} mistakes={mistakes.all} refusal={blankRefusalWords(t, state)} />
      <SeenField seen={seen} state={state} />
      <NameAndFabric typed={state.typed} mistakeOf={mistakes.of} />
      <BandChoice chosen={state.typed.ageBand} />
      <FieldGroup inline id="tolerance" label={facts('tolerance')} hint={facts('toleranceHint', usual)}>
        <div className={styles.lengths}>
          <TextField
            name="acrossTolerance"
            label={facts('toleranceAcross')}
            error={mistakes.of('acrossTolerance')}
            defaultValue={state.typed.acrossTolerance}
            width="short"
            autoComplete="off"
          />
          <TextField
            name="longTolerance"
            label={facts('toleranceLong')}
            error={mistakes.of('longTolerance')}
            defaultValue={state.typed.longTolerance}
            width="short"
            autoComplete="off"
          />
        </div>
      </FieldGroup>
      <TextArea
        name="supplierNote"
        label={facts('supplierNote')}
        hint={facts('supplierNoteHint')}
        error={mistakes.of('supplierNote')}
        defaultValue={state.typed.supplierNote}
        rows={3}
      />
      <div className={styles.end}>
        <SubmitButton waiting={facts('waiting')}>{facts('submit')}</SubmitButton>
        <span role="status" className={styles.kept}>
          {state.done ? `✓ ${facts('kept')}` : null}
        </span>
      </div>
    </form>
  );
}
