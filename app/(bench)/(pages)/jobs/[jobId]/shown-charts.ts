import type { ShownChart } from '@/components/garments/shown-chart';
import { completeMeasures } from '@/lib/domain/garment/kinds';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { OFFERED_BANDS, offeredChart } from './offered-charts';

const SHOWN_MEASURES = ['chestWidth', 'bodyLength', 'sleeveLength', 'acrossShoulder', 'neckWidth'] as const;

/** The starter charts as tables, with the measures a maker knows a garment by. */
export function shownCharts(locale: Locale, unit: LengthUnit): ShownChart[] {
  const t = translatorFor(locale, 'garments');
  return OFFERED_BANDS.map(offeredChart).map(({ kind, ageBand, sizes }) => ({
    name: t(`counts.band.${ageBand}`),
    measures: SHOWN_MEASURES.map((measure) => t(`add.measure.${measure}`)),
    sizes: sizes.map(({ label, entered }) => {
      const completed = completeMeasures(kind, entered);
      if (!completed.ok) throw new Error(`starter chart ${kind} ${ageBand} ${label}: ${completed.refusal.reason}`);
      const { um, estimated } = completed.measures;
      return {
        label,
        values: SHOWN_MEASURES.map((measure) => {
          const lengthUm = um[measure];
          if (lengthUm === undefined) throw new Error(`starter chart ${kind} ${ageBand} ${label} lacks ${measure}`);
          return {
            measure: t(`add.measure.${measure}`),
            text: formatLength(lengthUm, unit),
            isEstimated: estimated.includes(measure),
          };
        }),
      };
    }),
  }));
}
