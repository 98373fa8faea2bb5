import type { Micrometres } from '../measure/length';

/**
 * What the trade takes with a tape on a garment lying flat, straight from point to point and never along a curve. Widths
 * are edge to edge of the flat garment (half the girth). Each kind has some of them.
 *
 * Tops: body length runs from the high point of the shoulder (where the shoulder meets the neck seam) straight down to
 * the hem; chest width is taken 1 in below the armhole; neck width and neck drops go to the neck seam; armhole from the
 * end of the shoulder to the underarm (of a raglan: from the high point of the shoulder); sleeve length from the end of
 * the shoulder to the end of the sleeve along its fold (of a raglan: from the high point of the shoulder); ribs across
 * their knit; hood height from the front neck seam to the top of the hood standing up, hood fall from the back neck seam
 * to where the hood lying on the back ends; pocket drop from the top edge to the top of the pocket. Legs: leg length
 * along the outseam, thigh width 1 in below the rise, rise from the top of the waistband. Everything else: width and
 * height of the panel that is decorated.
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
  'waistWidth',
  'cuffRib',
  'hemRib',
  'hoodHeight',
  'hoodWidth',
  'hoodFall',
  'placketLength',
  'placketWidth',
  'collarFall',
  'crotchWidth',
  'legOpening',
  'legLength',
  'thighWidth',
  'rise',
  'waistband',
  'panelWidth',
  'panelHeight',
  'brimWidth',
  'brimDepth',
  'bibWidth',
  'bibHeight',
  'pocketWidth',
  'pocketHeight',
  'pocketDrop',
  'handleLength',
  'handleWidth',
  'handleSpacing',
] as const;

export type MeasureName = (typeof MEASURE_NAMES)[number];

/** Measures as a chart gives them: any may be missing. Micrometres. */
export type EnteredMeasures = Partial<Record<MeasureName, Micrometres>>;

/** All the measures of one kind that its flats are drawn from, and which of them nobody entered. Micrometres. */
export type Measures = {
  readonly um: Readonly<Partial<Record<MeasureName, Micrometres>>>;
  readonly estimated: readonly MeasureName[];
};

/** Chest and thigh width are taken this far below the armhole or the rise (common practice, no source). */
export const WIDTH_TAKEN_BELOW_UM: Micrometres = 25_400;

/** Why measures cannot belong to one garment. */
export const MEASURE_REFUSALS = [
  'missing',
  'outOfRange',
  'tooLongForWidth',
  'tooWideForLength',
  'neckWiderThanShoulders',
  'neckBelowArmhole',
  'backNeckBelowFront',
  'ribFillsNeck',
  'shouldersWiderThanReach',
  'armholeBelowHem',
  'sleeveTooShort',
  'openingWiderThanSleeve',
  'waistOutOfLine',
  'hemOutOfLine',
  'partTooLarge',
] as const;

/** The first thing that is wrong with a size, and the measure it is said of. */
export type MeasureRefusal = {
  readonly reason: (typeof MEASURE_REFUSALS)[number];
  readonly measure: MeasureName;
};
