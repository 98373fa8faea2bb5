import type { ShownChart } from '@/components/garments/shown-chart';
import { kindMeasures } from '@/lib/domain/garment/kinds';
import type { GarmentBlank } from '@/lib/domain/layout/document';
import type { ChartChanges } from '@/lib/domain/layout/take-chart';
import { formatLength, formatLengthValue } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

/** The most lines that say what changed in a chart; the rest is counted. */
const MOST_LINES = 8;

/** A blank's chart as a table: every measure its flat is drawn from, size by size. */
export function shownChart(locale: Locale, unit: LengthUnit, { name, kind, sizes }: GarmentBlank): ShownChart {
  const t = translatorFor(locale, 'garments.chart');
  const words = translatorFor(locale, 'garment-words');
  return {
    name: t('caption', { name, unit }),
    sizes: sizes.map(({ label }) => label),
    measures: kindMeasures(kind).map((measure) => ({
      measure: words(`measure.${measure}`),
      values: sizes.map(({ sizeId, label, measuresUm, estimated }) => {
        const um = measuresUm[measure];
        if (um === undefined) throw new Error(`${name} ${label} lacks ${measure}`);
        return { sizeId, text: formatLengthValue(um, unit), isEstimated: estimated.includes(measure) };
      }),
    })),
  };
}

/** What taking a chart as it is now would change, in lines: `L: chest 22 in → 23 in`. */
export function changeLines(locale: Locale, unit: LengthUnit, changes: ChartChanges): string[] {
  const t = translatorFor(locale, 'garments.refresh');
  const words = translatorFor(locale, 'garment-words');
  const list = (labels: readonly string[]) => new Intl.ListFormat(locale).format(labels);
  const measures = changes.measures.map(({ label, measure, fromUm, toUm }) => {
    const to = formatLength(toUm, unit);
    const said = { size: label, measure: words(`measure.${measure}`), to };
    return fromUm === null ? t('nowGiven', said) : t('measure', { ...said, from: formatLength(fromUm, unit) });
  });
  const more = measures.length - MOST_LINES;
  return [
    ...measures.slice(0, MOST_LINES),
    ...(more > 0 ? [t('more', { count: more })] : []),
    ...changes.renamed.map(({ from, to }) => t('renamed', { from, to })),
    ...(changes.added.length > 0 ? [t('added', { sizes: list(changes.added), count: changes.added.length })] : []),
    ...(changes.gone.length > 0 ? [t('gone', { sizes: list(changes.gone), count: changes.gone.length })] : []),
    ...(changes.besides ? [t('besides')] : []),
  ];
}
