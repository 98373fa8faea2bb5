import type { Micrometres } from '../measure/length';

/**
 * What the trade takes with a tape on a garment lying flat. Widths are edge to edge of the flat garment (half the girth);
 * body length runs from the high point of the shoulder straight down to the hem; chest width is taken 1 in below the
 * armhole; armhole and sleeve measures are straight, not along the curve; neck and neck drops go to the collar seam.
 */
export const MEASURE_NAMES = [
  'bodyLength',
  'chestWidth',
  'sleeveLength',
  'acrossShoulder',
  'neckWidth',
  'frontNeckDrop',
  'backNeckDrop',
  'collarRib',
  'armhole',
  'sleeveOpening',
  'hemWidth',
] as const;

export type MeasureName = (typeof MEASURE_NAMES)[number];

/** Measures as a chart gives them: any may be missing. Micrometres. */
export type EnteredMeasures = Partial<Record<MeasureName, Micrometres>>;

/** All the measures a flat is drawn from, and which of them nobody entered. Micrometres. */
export type Measures = { readonly um: Record<MeasureName, Micrometres>; readonly estimated: readonly MeasureName[] };

/** Chest width is taken this far below the armhole (common practice, no source). */
export const CHEST_BELOW_ARMHOLE_UM: Micrometres = 25_400;

export type MeasureRefusal = {
  readonly reason:
    | 'missing'
    | 'outOfRange'
    | 'neckWiderThanShoulders'
    | 'shouldersWiderThanReach'
    | 'tooLongForWidth'
    | 'armholeBelowHem';
  readonly measure: MeasureName;
};
