'use client';

import { useActionState, useEffect, useId, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import { MOST_COLOURS, type StyleColour } from '@/lib/domain/garment/blank-style';
import { Button } from '../ui/button';
import { Disclosure } from '../ui/disclosure';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, type FormState, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import styles from './blank-forms.module.css';
import { blankRefusalWords } from './blank-refusal-words';
import { chartFieldId } from './chart-fields';
import {
  type ColourMistake,
  type ColourRow,
  colourField,
  rowsOfColourFields,
  rowsOfColours,
  UNCHOSEN_HEX,
} from './colour-fields';
import { ColourLine } from './colour-line';
import lines from './colour-line.module.css';
import { SeenField } from './seen-field';

/** A colour offered by name. */
export type UsualColour = { readonly name: string; readonly hex: string };

type ColoursFormProps = {
  action: FormAction;
  colours: readonly StyleColour[];
  usual: readonly UsualColour[];
  /** What of the kind is of a second cloth: `Sleeves and collar`; null where there is none. */
  secondPart: string | null;
  seen: string;
};

/** The colours a blank can be bought in. */
export function ColoursForm({ action, colours, usual, secondPart, seen }: ColoursFormProps) {
  const t = useTranslations('blanks');
  const form = useTranslations('form');
  const [state, send] = useActionState(action, unsent());
  const sent = rowsOfColourFields(state.typed) ?? [];
  const mistakes = Object.entries(state.mistakes).map(([field, code]) => {
    const id = field.split(' ')[1];
    const colour = sent.find((row) => row.id === id)?.name.trim() ?? '';
    return { fieldId: chartFieldId(field), text: t(`colours.mistake.${code as ColourMistake}`, { colour }) };
  });
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems state={state} title={form('fix')} mistakes={mistakes} refusal={blankRefusalWords(t, state)} />
      <SeenField seen={seen} state={state} />
      <HeldColours
        key={JSON.stringify(colours)}
        colours={colours}
        usual={usual}
        secondPart={secondPart}
        state={state}
      />
      <div className={styles.end}>
        <SubmitButton waiting={t('colours.waiting')}>{t('colours.submit')}</SubmitButton>
        <span role="status" className={styles.kept}>
          {state.done ? `✓ ${t('colours.kept')}` : null}
        </span>
      </div>
    </form>
  );
}

type HeldColoursProps = Pick<ColoursFormProps, 'colours' | 'usual' | 'secondPart'> & { state: FormState };

function HeldColours({ colours, usual, secondPart, state }: HeldColoursProps) {
  const t = useTranslations('blanks.colours');
  const prefix = useId().replace(/[^\w-]/g, '');
  const made = useRef(0);
  const focus = useRef<string | null>(null);
  const [rows, setRows] = useState<readonly ColourRow[]>(
    () => (state.done ? null : rowsOfColourFields(state.typed)) ?? rowsOfColours(colours),
  );
  useEffect(() => {
    if (focus.current) document.getElementById(focus.current)?.focus();
    focus.current = null;
  });
  const add = ({ name, hex }: UsualColour) => {
    const id = `new${prefix}-${made.current++}`;
    setRows([...rows, { id, name, hex, heather: false, hasSecond: false, secondName: '', secondHex: hex }]);
    if (name === '') focus.current = chartFieldId(colourField.name(id));
  };
  const left = usual.filter(({ name }) => !rows.some((row) => row.name.trim().toLowerCase() === name.toLowerCase()));
  const isFull = rows.length >= MOST_COLOURS;
  return (
    <>
      <input type="hidden" name={colourField.order} value={rows.map(({ id }) => id).join(' ')} />
      {rows.length === 0 ? <p>{t('none')}</p> : null}
      <ul className={lines.colours}>
        {rows.map((row, index) => (
          <ColourLine
            key={row.id}
            row={row}
            number={index + 1}
            secondPart={secondPart}
            wrong={state.mistakes}
            onChange={(next) => setRows(rows.map((each) => (each.id === row.id ? next : each)))}
            onRemove={() => {
              const next = rows.filter(({ id }) => id !== row.id);
              const beside = next[Math.min(index, next.length - 1)];
              setRows(next);
              focus.current = beside ? chartFieldId(colourField.name(beside.id)) : 'add-colour';
            }}
          />
        ))}
      </ul>
      {isFull ? <p>{t('most', { most: MOST_COLOURS })}</p> : null}
      <div className={lines.adding}>
        <Button id="add-colour" disabled={isFull} onClick={() => add({ name: '', hex: UNCHOSEN_HEX })}>
          {t('add')}
        </Button>
        {left.length > 0 && !isFull ? (
          <Disclosure summary={t('usual')} open={colours.length === 0}>
            <div className={lines.usual}>
              {left.map((colour) => (
                <button
                  key={colour.name}
                  type="button"
                  className={lines.chip}
                  aria-label={t('addUsual', { colour: colour.name })}
                  onClick={() => add(colour)}
                >
                  <svg viewBox="0 0 16 16" aria-hidden="true" className={lines.swatch}>
                    <rect width="16" height="16" fill={colour.hex} />
                  </svg>
                  {colour.name}
                </button>
              ))}
            </div>
          </Disclosure>
        ) : null}
      </div>
    </>
  );
}
