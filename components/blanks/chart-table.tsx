'use client';

import { useMemo } from 'react';
import { useTranslations } from 'use-intl';
import { type AgeBand, completeMeasures, type GarmentKind } from '@/lib/domain/garment/kinds';
import type { MeasureName } from '@/lib/domain/garment/measures';
import { formatLengthValue } from '@/lib/domain/measure/format-length';
import { parseLength } from '@/lib/domain/measure/parse-length';
import { sizeWords } from '@/lib/messages/reading-words';
import { chartField, chartFieldId } from './chart-fields';
import { type ChartRow, type ChartUnits, enteredOf } from './chart-rows';
import styles from './chart-table.module.css';
import type { ChartInHand } from './use-chart';

type ChartTableProps = {
  chart: ChartInHand;
  units: ChartUnits;
  kind: GarmentKind;
  ageBand: AgeBand;
  /** Shown as columns, in this order; the others keep what they hold. */
  shown: readonly MeasureName[];
  hidden: readonly MeasureName[];
  /** Names of the fields something is wrong with. */
  wrong: ReadonlySet<string>;
};

/** A size chart to type into: a row a size, a column a measure. It scrolls sideways in its own box, the sizes stay. */
export function ChartTable({ chart, units, shown, hidden, wrong, kind, ageBand }: ChartTableProps) {
  const t = useTranslations('blanks.chart');
  const words = useTranslations('garment-words.measure');
  return (
    <section aria-label={t('name')} tabIndex={0} className={styles.scroll}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col" className={styles.sizeHead}>
              {t('size')}
            </th>
            {shown.map((measure) => (
              <th key={measure} scope="col" className={styles.measureHead}>
                {words(measure)}
              </th>
            ))}
            <th scope="col">{t('cost', { currency: units.currency })}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {chart.rows.map((row, index) => (
            <SizeRow
              key={row.id}
              row={row}
              index={index}
              chart={chart}
              units={units}
              shown={shown}
              hidden={hidden}
              wrong={wrong}
              kind={kind}
              ageBand={ageBand}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function SizeRow({
  row,
  index,
  chart,
  units,
  shown,
  hidden,
  wrong,
  kind,
  ageBand,
}: ChartTableProps & { row: ChartRow; index: number }) {
  const t = useTranslations('blanks.chart');
  const words = useTranslations('garment-words.measure');
  const readings = useTranslations('readings');
  const { unit } = units;
  const estimates = useMemo(() => estimatesOf(kind, row, units), [kind, row, units]);
  const number = index + 1;
  const size =
    row.label.trim() === '' ? t('number', { number }) : sizeWords(readings, { ageBand, label: row.label.trim() });
  const field = (name: string) => ({
    id: chartFieldId(name),
    name,
    autoComplete: 'off',
    spellCheck: false,
    'aria-invalid': wrong.has(name) || undefined,
  });
  return (
    <tr>
      <th scope="row" className={styles.size}>
        <input
          {...field(chartField.label(row.id))}
          aria-label={t('sizeField', { number })}
          value={row.label}
          maxLength={60}
          className={styles.label}
          onChange={({ target }) => chart.edit(row.id, { part: 'label', text: target.value })}
        />
        {hidden.map((measure) => (
          <input
            key={measure}
            type="hidden"
            name={chartField.measure(measure, row.id)}
            value={row.cells[measure]?.text ?? ''}
          />
        ))}
        {[...shown, ...hidden].map((measure) => (
          <ExactField key={measure} measure={measure} row={row} unit={unit} />
        ))}
      </th>
      {shown.map((measure) => (
        <td key={measure}>
          <input
            {...field(chartField.measure(measure, row.id))}
            aria-label={t('measureField', { size, measure: words(measure) })}
            value={row.cells[measure]?.text ?? ''}
            placeholder={estimates[measure]}
            className={styles.measure}
            onChange={({ target }) => chart.edit(row.id, { part: measure, text: target.value })}
          />
        </td>
      ))}
      <td>
        <input
          {...field(chartField.cost(row.id))}
          aria-label={t('costField', { size })}
          inputMode="decimal"
          value={row.cost}
          className={styles.measure}
          onChange={({ target }) => chart.edit(row.id, { part: 'cost', text: target.value })}
        />
      </td>
      <td className={styles.tools}>
        <button
          type="button"
          aria-label={t('up', { size })}
          disabled={index === 0}
          className={styles.tool}
          onClick={() => chart.moveUp(row.id)}
        >
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <path d="M8 14V3M3 8l5-5 5 5" />
          </svg>
        </button>
        <button
          type="button"
          aria-label={t('remove', { size })}
          className={styles.tool}
          onClick={() => chart.removeRow(row.id)}
        >
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <path d="m3 3 10 10M13 3 3 13" />
          </svg>
        </button>
      </td>
    </tr>
  );
}

/** What a field stands for to the micrometre, sent along where its text is rounded. */
function ExactField({ measure, row, unit }: { measure: MeasureName; row: ChartRow; unit: ChartUnits['unit'] }) {
  const cell = row.cells[measure];
  if (!cell || cell.um === null || cell.text.trim() !== formatLengthValue(cell.um, unit)) return null;
  const parsed = parseLength(cell.text, unit);
  if (parsed.ok && parsed.um === cell.um) return null;
  return <input type="hidden" name={chartField.exact(measure, row.id)} value={cell.um} />;
}

/** What is estimated of a size, as its empty fields show it: `≈ 17 3/8`. None while the size cannot be. */
function estimatesOf(kind: GarmentKind, row: ChartRow, { unit }: ChartUnits): Partial<Record<MeasureName, string>> {
  const completed = completeMeasures(kind, enteredOf(row, unit));
  if (!completed.ok) return {};
  const { um, estimated } = completed.measures;
  return Object.fromEntries(estimated.map((measure) => [measure, `≈ ${formatLengthValue(um[measure] ?? 0, unit)}`]));
}
