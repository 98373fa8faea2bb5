import type { CheckedWidth, WidthToCheck } from '@/lib/domain/layout/photograph-check';
import { formatLength } from '@/lib/domain/measure/format-length';
import { type LengthUnit, type Micrometres, tradeStepUm } from '@/lib/domain/measure/length';
import type { Translator } from '@/lib/messages/translator';

/** Measures a photograph is checked by, as the catalogue names them. */
type CheckedMeasure = 'chestWidth' | 'thighWidth' | 'panelWidth' | 'sleeveOpening';

/** What the width is called: `chest width`. */
export function widthWords(t: Translator<'photographs'>, { measure }: Pick<WidthToCheck, 'measure'>): string {
  return t(`width.${measure as CheckedMeasure}`);
}

/** A taken width beside the chart's, and what to make of the difference. */
export function checkWords(
  t: Translator<'photographs'>,
  width: WidthToCheck,
  { foundUm, chartUm, differenceUm, beyondCut }: CheckedWidth,
  acrossUm: Micrometres,
  unit: LengthUnit,
): { readonly found: string; readonly verdict: string; readonly isBeyond: boolean } {
  const measure = widthWords(t, width);
  const found = t('setting.found', {
    measure: `${measure.charAt(0).toLocaleUpperCase()}${measure.slice(1)}`,
    found: formatLength(foundUm, unit),
    chart: formatLength(chartUm, unit),
    estimated: width.estimated ? 'yes' : 'no',
  });
  const cut = formatLength(acrossUm, unit);
  const difference = formatLength(Math.abs(differenceUm), unit);
  const step = tradeStepUm(unit);
  if (Math.abs(differenceUm) * 2 < step && !beyondCut)
    return { found, verdict: t('setting.same', { step: formatLength(step, unit) }), isBeyond: false };
  const towards = differenceUm > 0 ? 'wider' : 'narrower';
  const verdict = t(beyondCut ? `setting.${towards}Beyond` : `setting.${towards}`, { difference, cut });
  return { found, verdict, isBeyond: beyondCut };
}
