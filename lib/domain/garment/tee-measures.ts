import { type Micrometres, roundUm, UM_PER_INCH, UM_PER_MM } from '../measure/length';
import {
  CHEST_BELOW_ARMHOLE_UM,
  type EnteredMeasures,
  MEASURE_NAMES,
  type MeasureName,
  type MeasureRefusal,
  type Measures,
} from './measures';
import { SHOULDER_SLOPE } from './tee-shape';

/**
 * How a tee's other measures follow from its chest width: `base + share × chest`, chest and base in millimetres.
 * Source of the trend: proportions of an open T-shirt pattern (FreeSewing Teagan 4.10, MIT), loosened to the fuller neck
 * and armhole of a stock blank (common practice, no source). Shoulders grow slower than the chest above an adult S.
 */
const SHARE_OF_CHEST: Record<
  Exclude<MeasureName, 'bodyLength' | 'chestWidth' | 'sleeveLength' | 'acrossShoulder'>,
  { base: number; share: number }
> = {
  neckWidth: { base: 72, share: 0.17 },
  frontNeckDrop: { base: 28, share: 0.15 },
  backNeckDrop: { base: 10, share: 0.035 },
  collarRib: { base: 9, share: 0.02 },
  armhole: { base: 57, share: 0.31 },
  sleeveOpening: { base: 38, share: 0.27 },
  hemWidth: { base: 0, share: 1 },
};

const ADULT_SMALL_CHEST_MM = 457.2;
const NARROWEST_UM = 4 * UM_PER_INCH;
const WIDEST_UM = 60 * UM_PER_INCH;

/** The measures a tee cannot do without; the rest follow by proportion. */
export const TEE_REQUIRED: readonly MeasureName[] = ['bodyLength', 'chestWidth', 'sleeveLength'];

/**
 * All measures of a tee from the few that were entered, or the first reason they cannot belong to one garment.
 * Entered values are kept as they are; estimated ones are listed in `estimated`.
 */
export function teeMeasures(
  entered: EnteredMeasures,
): { ok: true; measures: Measures } | { ok: false; refusal: MeasureRefusal } {
  for (const measure of TEE_REQUIRED) {
    if (entered[measure] === undefined) return { ok: false, refusal: { reason: 'missing', measure } };
  }
  const chestMm = (entered.chestWidth ?? 0) / UM_PER_MM;
  const um = {} as Record<MeasureName, Micrometres>;
  const estimated: MeasureName[] = [];
  for (const measure of MEASURE_NAMES) {
    const given = entered[measure];
    if (given === undefined) estimated.push(measure);
    um[measure] = given ?? roundUm(estimateMm(measure, chestMm) * UM_PER_MM);
  }
  const refusal = impossibleMeasure(um);
  return refusal ? { ok: false, refusal } : { ok: true, measures: { um, estimated } };
}

function estimateMm(measure: MeasureName, chestMm: number): number {
  if (measure === 'acrossShoulder') return acrossShoulderMm(chestMm);
  const rule = measure in SHARE_OF_CHEST ? SHARE_OF_CHEST[measure as keyof typeof SHARE_OF_CHEST] : undefined;
  if (!rule) throw new Error(`tee measures: ${measure} has no proportion`);
  return rule.base + rule.share * chestMm;
}

function acrossShoulderMm(chestMm: number): number {
  const small = Math.min(chestMm, ADULT_SMALL_CHEST_MM);
  return 0.86 * small + 0.52 * (chestMm - small);
}

function impossibleMeasure(um: Record<MeasureName, Micrometres>): MeasureRefusal | null {
  for (const measure of ['bodyLength', 'chestWidth', 'acrossShoulder', 'hemWidth'] as const) {
    if (!(um[measure] >= NARROWEST_UM && um[measure] <= WIDEST_UM)) return { reason: 'outOfRange', measure };
  }
  for (const measure of MEASURE_NAMES) {
    if (!(um[measure] > 0 && um[measure] <= WIDEST_UM)) return { reason: 'outOfRange', measure };
  }
  if (um.bodyLength > 3 * um.chestWidth) return { reason: 'tooLongForWidth', measure: 'bodyLength' };
  if (um.neckWidth >= um.acrossShoulder) return { reason: 'neckWiderThanShoulders', measure: 'neckWidth' };
  const overhang = Math.abs(um.chestWidth - um.acrossShoulder) / 2;
  if (overhang >= um.armhole) return { reason: 'shouldersWiderThanReach', measure: 'armhole' };
  const shoulderDrop = (SHOULDER_SLOPE * (um.acrossShoulder - um.neckWidth)) / 2;
  const underarm = shoulderDrop + Math.sqrt(um.armhole ** 2 - overhang ** 2);
  if (underarm + CHEST_BELOW_ARMHOLE_UM >= um.bodyLength) return { reason: 'armholeBelowHem', measure: 'armhole' };
  return null;
}
