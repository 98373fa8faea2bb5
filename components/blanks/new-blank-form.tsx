'use client';

import { useActionState, useState } from 'react';
import { useTranslations } from 'use-intl';
import { type AgeBand, GARMENT_KINDS, type GarmentKind } from '@/lib/domain/garment/kinds';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, unsent } from '../ui/form-state';
import { SelectField } from '../ui/select-field';
import { SubmitButton } from '../ui/submit-button';
import { useMistakes } from '../ui/use-mistakes';
import styles from './blank-forms.module.css';
import { ChartEditor } from './chart-editor';
import { rowsOfFields } from './chart-fields';
import { type ChartUnits, emptyRow } from './chart-rows';
import { BandChoice, NameAndFabric } from './facts-fields';
import { useChart } from './use-chart';
import { useChartMistakes } from './use-chart-mistakes';

/** Fields of the form that are not its chart's. */
const OWN_FIELDS: readonly string[] = ['name', 'fabric', 'kind', 'ageBand'];

/** A new blank: what it is, and its size chart however it comes. */
export function NewBlankForm({ action, units }: { action: FormAction; units: ChartUnits }) {
  const t = useTranslations('blanks');
  const form = useTranslations('form');
  const facts = useTranslations('blanks.facts');
  const kinds = useTranslations('garment-words.kind');
  const [state, send] = useActionState(action, unsent({ kind: 'crewTee', ageBand: 'adult' }));
  const [kind, setKind] = useState<GarmentKind>('crewTee');
  const [ageBand, setAgeBand] = useState<AgeBand>('adult');
  const chart = useChart({ ...units, kind, ageBand }, () => ({
    rows: rowsOfFields(state.typed) ?? ['a', 'b', 'c'].map((id) => emptyRow(`first-${id}`)),
    source: 'own',
  }));
  const own = Object.fromEntries(Object.entries(state.mistakes).filter(([field]) => OWN_FIELDS.includes(field)));
  const mistakes = useMistakes(facts, { mistakes: own });
  const wrongChart = useChartMistakes(state, { kind, ageBand }, units);
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems
        state={state}
        title={form('fix')}
        mistakes={[...mistakes.all, ...wrongChart]}
        refusal={state.refusal === null ? null : t('refusal.faults')}
      />
      <NameAndFabric typed={state.typed} mistakeOf={mistakes.of} />
      <SelectField
        name="kind"
        label={facts('kind')}
        options={GARMENT_KINDS.map((value) => ({ value, label: kinds(value) }))}
        defaultValue={state.typed.kind}
        onChange={({ target }) => setKind(GARMENT_KINDS.find((each) => each === target.value) ?? kind)}
      />
      <BandChoice chosen={state.typed.ageBand} onChoose={setAgeBand} />
      <section aria-labelledby="new-chart" className={styles.form}>
        <h2 id="new-chart">{t('chart.title')}</h2>
        <ChartEditor
          chart={chart}
          units={units}
          kind={kind}
          ageBand={ageBand}
          wrong={new Set(Object.keys(state.mistakes))}
        />
      </section>
      <div className={styles.end}>
        <SubmitButton kind="primary" waiting={t('make.waiting')}>
          {t('make.submit')}
        </SubmitButton>
      </div>
    </form>
  );
}
