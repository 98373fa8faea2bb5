'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import { CheckField } from '../ui/check-field';
import { FieldGroup } from '../ui/field-group';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SelectField, type SelectOption } from '../ui/select-field';
import { SubmitButton } from '../ui/submit-button';
import { TextArea } from '../ui/text-area';
import { TextField } from '../ui/text-field';
import { useMistakes } from '../ui/use-mistakes';
import styles from './record-answer-form.module.css';
import { RECORDED_ROUTES } from './recorded-routes';

/** Whole-form refusals of recording an answer. */
export type RecordRefusal = 'replaced' | 'withdrawn' | 'alreadySignedOff' | 'noRevision' | 'mayNotSign';

type RecordAnswerFormProps = {
  action: FormAction;
  /** Those who were asked. */
  contacts: readonly SelectOption[];
  /** What the fields begin with, by name. */
  typed: Readonly<Record<string, string>>;
  zone: string;
  /** Made with the form, so that sending it twice records once. */
  idempotencyKey: string;
};

/** What somebody said by text, by phone or across the counter. Nothing is ticked for them. */
export function RecordAnswerForm({ action, contacts, typed, zone, idempotencyKey }: RecordAnswerFormProps) {
  const t = useTranslations('revision.record');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent(typed));
  const mistakes = useMistakes(t, state);
  const [only] = contacts;
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems
        state={state}
        title={form('fix')}
        mistakes={mistakes.all}
        refusal={state.refusal === null ? null : t(`refusal.${state.refusal as RecordRefusal}`)}
      />
      <p>{t('text')}</p>
      <input type="hidden" name="idempotencyKey" value={idempotencyKey} />
      <div className={styles.pair}>
        <FieldGroup inline id="word" label={t('word')} error={mistakes.of('word')}>
          {(['yes', 'change'] as const).map((word) => (
            <CheckField
              key={word}
              type="radio"
              name="word"
              value={word}
              label={t(word)}
              defaultChecked={state.typed.word === word}
            />
          ))}
        </FieldGroup>
        <FieldGroup inline id="how" label={t('how')} error={mistakes.of('how')}>
          {RECORDED_ROUTES.map((how) => (
            <CheckField
              key={how}
              type="radio"
              name="how"
              value={how}
              label={t(`hows.${how}`)}
              defaultChecked={state.typed.how === how}
            />
          ))}
        </FieldGroup>
      </div>
      {contacts.length > 1 ? (
        <SelectField
          name="contactId"
          label={t('who')}
          error={mistakes.of('contactId')}
          options={contacts}
          defaultValue={state.typed.contactId}
        />
      ) : (
        <input type="hidden" name="contactId" value={only?.value ?? ''} />
      )}
      <div className={styles.pair}>
        <TextField
          name="typedName"
          label={t('typedName')}
          hint={t('typedNameHint')}
          error={mistakes.of('typedName')}
          defaultValue={state.typed.typedName}
          autoComplete="off"
          required
        />
        <TextField
          name="saidAt"
          type="datetime-local"
          label={t('saidAt')}
          hint={t('saidAtHint', { zone })}
          error={mistakes.of('saidAt')}
          defaultValue={state.typed.saidAt}
          width="middle"
          required
        />
      </div>
      <TextArea
        name="words"
        label={t('words')}
        hint={t('wordsHint')}
        error={mistakes.of('words')}
        defaultValue={state.typed.words}
        rows={3}
      />
      <div>
        <SubmitButton waiting={t('waiting')}>{t('submit')}</SubmitButton>
      </div>
    </form>
  );
}
