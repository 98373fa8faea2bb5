'use client';

import { useTranslations } from 'use-intl';
import type { AgeBand, GarmentKind } from '@/lib/domain/garment/kinds';
import type { FieldMistake } from '../ui/form-notice';
import type { FormState } from '../ui/form-state';
import { chartFieldId, readChart, rowsOfFields } from './chart-fields';
import { chartMistakeWords } from './chart-mistake-words';
import type { ChartUnits } from './chart-rows';

/** What is wrong with the chart that was sent, in words, each leading to its field. */
export function useChartMistakes(
  { typed, mistakes }: FormState,
  { kind, ageBand }: { kind: GarmentKind; ageBand: AgeBand },
  units: ChartUnits,
): FieldMistake[] {
  const t = useTranslations('blanks');
  const readings = useTranslations('readings');
  if (Object.keys(mistakes).length === 0) return [];
  return readChart(rowsOfFields(typed) ?? [], kind, units).mistakes.map((mistake) => ({
    fieldId: chartFieldId(mistake.field),
    text: chartMistakeWords({ t, readings, ageBand, unit: units.unit }, mistake),
  }));
}
