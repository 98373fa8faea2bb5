'use client';

import { useTranslations } from 'use-intl';
import { MOST_SIZES } from '@/lib/domain/garment/blank-style';
import type { ChartFault, ChartNote, ChartReading } from '@/lib/domain/garment/chart-text/chart-reading';
import { FormNotice } from '../ui/form-notice';
import styles from './chart-reading-summary.module.css';
import { type ChartRow, labelsLeft } from './chart-rows';

/** Faults told one by one; of the rest only how many. */
const MOST_TOLD = 12;

type ChartReadingSummaryProps = {
  reading: ChartReading;
  /** What is in the table already. */
  rows: readonly ChartRow[];
};

/** What was understood of a pasted chart: sizes and unit, what was guessed, and each cell that is left out. */
export function ChartReadingSummary({ reading, rows }: ChartReadingSummaryProps) {
  const t = useTranslations('blanks.source');
  const measures = useTranslations('garment-words.measure');
  if (!reading.ok) return <FormNotice kind="look" title={t(`refusal.${reading.reason}`)} />;
  const { sizes, unit, faults, notes, unknownRows } = reading;
  const labels = sizes.map(({ label }) => label).join(', ');
  const stay = labelsLeft(rows, sizes);
  return (
    <FormNotice kind={faults.length > 0 ? 'look' : 'note'} title={t('understood')}>
      <p>{t('sizes', { count: sizes.length, unit, labels })}</p>
      {stay.length > 0 ? <p>{t('stay', { labels: stay.join(', ') })}</p> : null}
      {notes.map((note) => (
        <p key={JSON.stringify(note)}>{noteWords(t, note)}</p>
      ))}
      {faults.length > 0 ? (
        <>
          <p className={styles.leftOut}>{t('leftOut', { count: faults.length })}</p>
          <ul className={styles.faults}>
            {faults.slice(0, MOST_TOLD).map((fault) => (
              <li key={`${fault.row} ${fault.column} ${fault.code}`}>{faultWords(t, measures, fault)}</li>
            ))}
            {faults.length > MOST_TOLD ? <li>{t('moreLeftOut', { count: faults.length - MOST_TOLD })}</li> : null}
          </ul>
        </>
      ) : null}
      {unknownRows.length > 0 ? (
        <p className={styles.unknown}>{t('unknown', { rows: unknownRows.join(' · ') })}</p>
      ) : null}
    </FormNotice>
  );
}

type Words = ReturnType<typeof useTranslations<'blanks.source'>>;

function faultWords(
  t: Words,
  measures: ReturnType<typeof useTranslations<'garment-words.measure'>>,
  fault: ChartFault,
) {
  const { code, row, column, found, measure, size } = fault;
  const at =
    measure && size ? t('atCell', { size, measure: measures(measure), row, column }) : t('at', { row, column });
  return t(`fault.${code}`, { at, found, most: MOST_SIZES });
}

function noteWords(t: Words, note: ChartNote): string {
  switch (note.code) {
    case 'unitGuessed':
      return t('note.unitGuessed', { unit: note.unit, unsure: String(note.unsure) });
    case 'unitOfChart':
      return t('note.unitOfChart', { unit: note.unit });
    default:
      return t(`note.${note.code}`, { heading: note.heading });
  }
}
