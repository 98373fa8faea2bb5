'use client';

import { useState } from 'react';
import { useTranslations } from 'use-intl';
import { MOST_SIZES } from '@/lib/domain/garment/blank-style';
import { type AgeBand, type GarmentKind, kindMeasures, requiredMeasures } from '@/lib/domain/garment/kinds';
import { Button } from '../ui/button';
import { CheckField } from '../ui/check-field';
import { Disclosure } from '../ui/disclosure';
import styles from './chart-editor.module.css';
import { chartField } from './chart-fields';
import { type ChartUnits, givenMeasures } from './chart-rows';
import { ChartSource } from './chart-source';
import { ChartTable } from './chart-table';
import { GenericNote } from './generic-note';
import type { ChartInHand } from './use-chart';

type ChartEditorProps = {
  chart: ChartInHand;
  units: ChartUnits;
  kind: GarmentKind;
  ageBand: AgeBand;
  /** Names of the fields something is wrong with. */
  wrong: ReadonlySet<string>;
};

/** A size chart in the making: from a starter chart, a supplier's, or typed; with the fields its form sends. */
export function ChartEditor({ chart, units, kind, ageBand, wrong }: ChartEditorProps) {
  const t = useTranslations('blanks');
  const [isOpen, setIsOpen] = useState(false);
  const needed = requiredMeasures(kind);
  const others = kindMeasures(kind).filter((measure) => !needed.includes(measure));
  const given = givenMeasures(chart.rows, others);
  const faulty = others.filter((measure) => chart.rows.some(({ id }) => wrong.has(chartField.measure(measure, id))));
  const columns = useOnce([...given, ...faulty]);
  const wasStarter = useOnce(chart.source === 'starter' ? ['starter'] : []).length > 0;
  const shown = [...needed, ...others.filter((measure) => isOpen || columns.includes(measure))];
  const hidden = others.filter((measure) => !shown.includes(measure));
  const isBare = chart.rows.every(({ label }) => label === '');
  return (
    <div className={styles.editor}>
      <input type="hidden" name={chartField.rows} value={chart.rows.map(({ id }) => id).join(' ')} />
      <input type="hidden" name={chartField.source} value={chart.source} />
      <div className={styles.begin}>
        {isBare || chart.source === 'starter' ? (
          chart.useStarter ? (
            isBare && <Button onClick={chart.useStarter}>{t('chart.starter')}</Button>
          ) : (
            <p className={styles.hint}>{t('chart.noStarter')}</p>
          )
        ) : null}
        <Disclosure summary={t('source.summary')}>
          <ChartSource kind={kind} chart={chart} />
        </Disclosure>
      </div>
      {chart.source === 'starter' && !isBare ? <GenericNote text={t('genericNote')} /> : null}
      <p className={styles.hint}>
        {t('chart.hint', { unit: units.unit, example: units.unit === 'in' ? '70 cm' : '27 1/2 in' })}
      </p>
      <ChartTable
        chart={chart}
        units={units}
        kind={kind}
        ageBand={ageBand}
        shown={shown}
        hidden={hidden}
        wrong={wrong}
      />
      <div className={styles.tools}>
        {chart.rows.length < MOST_SIZES ? (
          <Button onClick={chart.addRow}>{t('chart.add')}</Button>
        ) : (
          <p>{t('chart.most', { most: MOST_SIZES })}</p>
        )}
        {others.some((measure) => !columns.includes(measure)) ? (
          <Button kind="quiet" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
            {isOpen ? t('chart.fewer') : t('chart.more', { count: hidden.length })}
          </Button>
        ) : null}
      </div>
      {isOpen ? <p className={styles.hint}>{t('chart.estimates')}</p> : null}
      {wasStarter && !isBare ? (
        <CheckField
          name=""
          id="checked-chart"
          label={t('chart.checked')}
          hint={t('chart.checkedHint')}
          checked={chart.source === 'own'}
          onChange={({ target }) => chart.setSource(target.checked ? 'own' : 'starter')}
        />
      ) : null}
    </div>
  );
}

/** All that was among `now` since this was first shown: a column does not go while its last measure is typed anew. */
function useOnce<Each>(now: readonly Each[]): readonly Each[] {
  const [seen, setSeen] = useState(now);
  const fresh = now.filter((each) => !seen.includes(each));
  if (fresh.length > 0) setSeen([...seen, ...fresh]);
  return [...seen, ...fresh];
}
