'use client';

import { useActionState } from 'react';
import { useTranslations } from 'use-intl';
import type { StyleSize } from '@/lib/domain/garment/blank-style';
import type { AgeBand, GarmentKind } from '@/lib/domain/garment/kinds';
import { FormProblems } from '../ui/form-problems';
import { type FormAction, type FormState, unsent } from '../ui/form-state';
import { SubmitButton } from '../ui/submit-button';
import styles from './blank-forms.module.css';
import { blankRefusalWords } from './blank-refusal-words';
import { ChartEditor } from './chart-editor';
import { rowsOfFields } from './chart-fields';
import { type ChartUnits, rowsOfSizes } from './chart-rows';
import { SeenField } from './seen-field';
import { type ChartSourceKind, useChart } from './use-chart';
import { useChartMistakes } from './use-chart-mistakes';

export type KeptChart = {
  readonly kind: GarmentKind;
  readonly ageBand: AgeBand;
  readonly sizes: readonly StyleSize[];
  readonly source: ChartSourceKind;
};

type ChartFormProps = { action: FormAction; kept: KeptChart; units: ChartUnits; seen: string };

/** The size chart of a blank that is on the list. */
export function ChartForm({ action, kept, units, seen }: ChartFormProps) {
  const t = useTranslations('blanks');
  const [state, send] = useActionState(action, unsent());
  const mistakes = useChartMistakes(state, kept, units);
  return (
    <form action={send} noValidate className={styles.form}>
      <FormProblems
        state={state}
        title={t(mistakes.length === 1 ? 'chart.oneFix' : 'chart.fix')}
        mistakes={mistakes}
        refusal={blankRefusalWords(t, state)}
      />
      <SeenField seen={seen} state={state} />
      {/* What was kept is a chart of its own: its new sizes have ids now. */}
      <HeldChart key={JSON.stringify(kept)} kept={kept} units={units} state={state} />
      <div className={styles.end}>
        <SubmitButton waiting={t('chart.waiting')}>{t('chart.submit')}</SubmitButton>
        <span role="status" className={styles.kept}>
          {state.done ? `✓ ${t('chart.kept')}` : null}
        </span>
      </div>
    </form>
  );
}

function HeldChart({ kept, units, state }: { kept: KeptChart; units: ChartUnits; state: FormState }) {
  const { kind, ageBand } = kept;
  const chart = useChart({ ...units, kind, ageBand }, () => ({
    rows: (state.done ? null : rowsOfFields(state.typed)) ?? rowsOfSizes(kept.sizes, units),
    source: kept.source,
  }));
  return (
    <ChartEditor
      chart={chart}
      units={units}
      kind={kind}
      ageBand={ageBand}
      wrong={new Set(Object.keys(state.mistakes))}
    />
  );
}
