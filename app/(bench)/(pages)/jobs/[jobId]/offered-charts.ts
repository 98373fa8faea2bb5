import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';

/** Bands a new garment is offered in, smallest sizes first. */
export const OFFERED_BANDS = ['youth', 'adult'] as const;
export type OfferedBand = (typeof OFFERED_BANDS)[number];

/** The kind a new garment is of. */
export const OFFERED_KIND = 'crewTee';

/** The starter chart a band of the offered kind is drawn from. Throws for a band that has none. */
export function offeredChart(band: OfferedBand): (typeof STARTER_CHARTS)[number] {
  const chart = STARTER_CHARTS.find(({ kind, ageBand }) => kind === OFFERED_KIND && ageBand === band);
  if (!chart) throw new Error(`no starter chart of ${OFFERED_KIND} for ${band}`);
  return chart;
}
