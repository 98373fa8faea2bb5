'use client';

import { useId, useMemo, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { ChartReads } from '@/lib/domain/garment/chart-text/chart-reading';
import { readChartText } from '@/lib/domain/garment/chart-text/read-chart-text';
import type { GarmentKind } from '@/lib/domain/garment/kinds';
import { Button } from '../ui/button';
import { CheckField } from '../ui/check-field';
import { readFileText } from '../ui/read-file-text';
import { SelectField } from '../ui/select-field';
import { TextArea } from '../ui/text-area';
import { TextField } from '../ui/text-field';
import { ChartReadingSummary } from './chart-reading-summary';
import styles from './chart-source.module.css';
import type { ChartInHand } from './use-chart';

const UNITS = ['auto', 'in', 'cm'] as const;

/** A supplier's chart, pasted or loaded: what was understood of it is said before it goes into the table. */
export function ChartSource({ kind, chart }: { kind: GarmentKind; chart: ChartInHand }) {
  const t = useTranslations('blanks.source');
  const id = useId();
  const [text, setText] = useState('');
  const [unit, setUnit] = useState<ChartReads['unit']>('auto');
  const [isGirth, setIsGirth] = useState(false);
  const [fileProblem, setFileProblem] = useState<string | null>(null);
  const [put, setPut] = useState<number | null>(null);
  const reading = useMemo(
    () =>
      text.trim() === '' ? null : readChartText(text, { kind, unit, ...(isGirth && { chestIs: 'girth' as const }) }),
    [text, kind, unit, isGirth],
  );
  const asksGirth = isGirth || (reading?.ok && reading.notes.some(({ code }) => code === 'mayBeGirth'));

  const type = (next: string) => {
    setText(next);
    setPut(null);
    setFileProblem(null);
  };
  const load = async (file: File | undefined) => {
    if (!file) return;
    const read = await readFileText(file);
    if (read.ok) type(read.text);
    else setFileProblem(t(read.reason === 'tooLong' ? 'fileTooLong' : 'fileRefused', { name: file.name }));
  };

  return (
    <div className={styles.source}>
      <TextArea
        id={`${id}-text`}
        name=""
        label={t('text')}
        hint={t('textHint')}
        value={text}
        rows={7}
        spellCheck={false}
        onChange={({ target }) => type(target.value)}
      />
      <div className={styles.pair}>
        <TextField
          id={`${id}-file`}
          name=""
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          label={t('file')}
          hint={t('fileHint')}
          error={fileProblem}
          onChange={async ({ target }) => {
            await load(target.files?.[0]);
            target.value = '';
          }}
        />
        <SelectField
          id={`${id}-unit`}
          name=""
          label={t('unit')}
          options={UNITS.map((value) => ({ value, label: t(`units.${value}`) }))}
          onChange={({ target }) => {
            setPut(null);
            setUnit(UNITS.find((each) => each === target.value) ?? 'auto');
          }}
        />
      </div>
      {asksGirth ? (
        <CheckField
          id={`${id}-girth`}
          name=""
          label={t('girth')}
          checked={isGirth}
          onChange={({ target }) => setIsGirth(target.checked)}
        />
      ) : null}
      {reading ? <ChartReadingSummary reading={reading} rows={put === null ? chart.rows : []} /> : null}
      {reading?.ok && reading.sizes.length > 0 ? (
        <div className={styles.end}>
          <Button
            onClick={() => {
              chart.putIn(reading);
              setPut(reading.sizes.length);
            }}
          >
            {t('put')}
          </Button>
          <p role="status" className={styles.hint}>
            {put === null ? t('putHint') : `✓ ${t('done', { count: put })}`}
          </p>
        </div>
      ) : null}
    </div>
  );
}
