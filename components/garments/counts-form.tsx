'use client';

import { useActionState, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { AgeBand } from '@/lib/domain/garment/kinds';
import { MOST_OF_ONE_ITEM } from '@/lib/domain/people/person';
import { sizeWords } from '@/lib/messages/reading-words';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, type FormState, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import { countFieldName } from './count-field-name';
import styles from './garment-forms.module.css';
import { garmentRefusal } from './refusal-words';

/** One blank of a garment with how many of each size are ordered. */
export type CountedBlank = {
  blankId: string;
  ageBand: AgeBand;
  /** Where another is for the same age band. */
  styleName: string | undefined;
  /** What its sizes go under: `Youth sizes`. */
  title: string;
  sizes: readonly { sizeId: string; label: string; quantity: number }[];
};

type CountsFormProps = { action: FormAction; blanks: readonly CountedBlank[] };

/** How many of each size, with the total as it is typed. */
export function CountsForm({ action, blanks }: CountsFormProps) {
  const t = useTranslations('garments');
  const readings = useTranslations('readings');
  const fields = blanks.flatMap(({ blankId, ageBand, styleName, sizes }) =>
    sizes.map(({ sizeId, label, quantity }) => ({
      name: countFieldName({ blankId, sizeId }),
      size: sizeWords(readings, { ageBand, label, styleName }),
      typed: quantity === 0 ? '' : String(quantity),
    })),
  );
  const kept = Object.fromEntries(fields.map(({ name, typed }) => [name, typed]));
  const [state, send] = useActionState(action, unsent(kept));
  const [edit, setEdit] = useState<{ since: FormState; total: number } | null>(null);
  const isEdited = edit !== null && edit.since === state;
  const total = isEdited ? edit.total : totalOf(Object.values(state.typed));
  const mistakes = fields
    .filter(({ name }) => state.mistakes[name])
    .map(({ name, size }) => ({ fieldId: idOf(name), text: t('counts.mistake', { size, most: MOST_OF_ONE_ITEM }) }));
  return (
    <form
      action={send}
      noValidate
      className={styles.counts}
      onInput={(event) => {
        const typed = [...new FormData(event.currentTarget).values()];
        setEdit({ since: state, total: totalOf(typed) });
      }}
    >
      <FormProblems state={state} title={t('counts.fix')} mistakes={mistakes} refusal={garmentRefusal(t, state)} />
      {blanks.map(({ blankId, title, sizes }) => (
        <fieldset key={blankId} className={styles.band}>
          <legend className={styles.bandName}>{title}</legend>
          <div className={styles.sizes}>
            {sizes.map(({ sizeId, label }) => {
              const name = countFieldName({ blankId, sizeId });
              return (
                <div key={sizeId} className={styles.size}>
                  <label htmlFor={idOf(name)}>{label}</label>
                  <input
                    id={idOf(name)}
                    name={name}
                    type="text"
                    inputMode="numeric"
                    autoComplete="off"
                    maxLength={6}
                    defaultValue={state.typed[name]}
                    aria-invalid={state.mistakes[name] ? true : undefined}
                    className={styles.number}
                  />
                </div>
              );
            })}
          </div>
        </fieldset>
      ))}
      <div className={styles.end}>
        <SubmitButton waiting={t('counts.waiting')}>{t('counts.submit')}</SubmitButton>
        <output className={styles.total}>{t('total', { count: total })}</output>
        <span role="status">
          {state.done && !isEdited ? <span className={styles.kept}>✓ {t('counts.kept')}</span> : null}
          {isEdited ? <span className={styles.unkept}>{t('counts.unkept')}</span> : null}
        </span>
      </div>
    </form>
  );
}

/** The id of a count's field: its name without the spaces an id cannot have. */
function idOf(name: string): string {
  return name.replaceAll(' ', '-');
}

function totalOf(typed: readonly unknown[]): number {
  return typed.reduce<number>((sum, text) => sum + (/^\s*\d{1,5}\s*$/.test(String(text)) ? Number(text) : 0), 0);
}
