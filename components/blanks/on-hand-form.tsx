'use client';

import { useActionState, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { StyleColour, StyleSize } from '@/lib/domain/garment/blank-style';
import type { AgeBand } from '@/lib/domain/garment/kinds';
import { sizeWords } from '@/lib/messages/reading-words';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, type FormState, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import forms from './blank-forms.module.css';
import { blankRefusalWords } from './blank-refusal-words';
import { chartFieldId } from './chart-fields';
import { countField, countOfField, MOST_ON_HAND, seenCountField } from './on-hand-fields';
import styles from './on-hand-form.module.css';

type OnHandFormProps = {
  action: FormAction;
  ageBand: AgeBand;
  sizes: readonly Pick<StyleSize, 'sizeId' | 'label'>[];
  colours: readonly Pick<StyleColour, 'colourId' | 'name' | 'hex'>[];
  onHand: readonly { sizeId: string; colourId: string; quantity: number }[];
};

/** What lies on the shelf, by size and colour. */
export function OnHandForm({ action, ageBand, sizes, colours, onHand }: OnHandFormProps) {
  const t = useTranslations('blanks');
  const readings = useTranslations('readings');
  const [state, send] = useActionState(action, unsent());
  const [edit, setEdit] = useState<{ since: FormState; total: number } | null>(null);
  const isEdited = edit !== null && edit.since === state;
  const quantities = new Map(onHand.map((each) => [countField(each), each.quantity]));
  const total = isEdited ? edit.total : onHand.reduce((sum, { quantity }) => sum + quantity, 0);
  const isMeanwhile = Object.values(state.mistakes).includes('meanwhile');
  const mistakes = Object.entries(state.mistakes).map(([name, code]) => {
    const at = countOfField(name);
    const label = sizes.find(({ sizeId }) => sizeId === at?.sizeId)?.label ?? '';
    const words = {
      size: sizeWords(readings, { ageBand, label }),
      colour: colours.find(({ colourId }) => colourId === at?.colourId)?.name ?? '',
    };
    const text =
      code === 'meanwhile'
        ? t('hand.meanwhile', { ...words, now: Number(state.detail?.[name] ?? 0) })
        : t('hand.notANumber', { ...words, most: MOST_ON_HAND });
    return { fieldId: chartFieldId(name), text };
  });
  return (
    <form
      action={send}
      noValidate
      className={forms.form}
      onInput={({ currentTarget }) => setEdit({ since: state, total: totalOf(new FormData(currentTarget)) })}
    >
      <FormProblems
        state={state}
        title={t(isMeanwhile ? 'hand.meanwhileTitle' : 'hand.fix')}
        mistakes={mistakes}
        refusal={blankRefusalWords(t, state)}
      />
      <section aria-label={t('hand.table')} tabIndex={0} className={styles.scroll}>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col" className={styles.size}>
                {t('hand.size')}
              </th>
              {colours.map(({ colourId, name, hex }) => (
                <th key={colourId} scope="col">
                  <span className={styles.colour}>
                    <svg viewBox="0 0 16 16" aria-hidden="true" className={styles.swatch}>
                      <rect width="16" height="16" fill={hex} />
                    </svg>
                    {name}
                  </span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sizes.map(({ sizeId, label }) => (
              <tr key={sizeId}>
                <th scope="row" className={styles.size}>
                  {label}
                </th>
                {colours.map(({ colourId, name: colour }) => {
                  const name = countField({ sizeId, colourId });
                  const kept = quantities.get(name) ?? 0;
                  return (
                    <td key={colourId}>
                      <input
                        id={chartFieldId(name)}
                        name={name}
                        aria-label={t('hand.field', { size: sizeWords(readings, { ageBand, label }), colour })}
                        inputMode="numeric"
                        autoComplete="off"
                        maxLength={7}
                        defaultValue={state.typed[name] ?? String(kept)}
                        aria-invalid={name in state.mistakes || undefined}
                        className={styles.count}
                      />
                      <input
                        type="hidden"
                        name={seenCountField({ sizeId, colourId })}
                        value={String(state.detail?.[name] ?? kept)}
                      />
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <div className={forms.end}>
        <SubmitButton waiting={t('hand.waiting')}>{t('hand.submit')}</SubmitButton>
        <output className={forms.total}>{t('hand.total', { count: total })}</output>
        <span role="status">
          {state.done && !isEdited ? <span className={forms.kept}>✓ {t('hand.kept')}</span> : null}
          {isEdited ? <span className={forms.unkept}>{t('hand.unkept')}</span> : null}
        </span>
      </div>
    </form>
  );
}

function totalOf(typed: FormData): number {
  return [...typed].reduce(
    (sum, [name, text]) => sum + (countOfField(name) && /^\s*\d{1,5}\s*$/.test(String(text)) ? Number(text) : 0),
    0,
  );
}
