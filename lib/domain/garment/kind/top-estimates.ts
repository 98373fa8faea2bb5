import type { Side } from '../flat';
import type { Estimates, Tape } from '../kind-design';
import type { MeasureName } from '../measures';

/** `base + share × chest`, in millimetres. */
export function ofChest(base: number, share: number): (tape: Tape) => number {
  return (tape) => base + share * tape('chestWidth');
}

/** The same of any measure. */
export function of(measure: MeasureName, base: number, share: number): (tape: Tape) => number {
  return (tape) => base + share * tape(measure);
}

const ADULT_SMALL_CHEST_MM = 457.2;

/** Shoulders grow slower than the chest above an adult S. */
export function shoulders(share: number, shareAbove: number): (tape: Tape) => number {
  return (tape) => {
    const small = Math.min(tape('chestWidth'), ADULT_SMALL_CHEST_MM);
    return share * small + shareAbove * (tape('chestWidth') - small);
  };
}

/** The sides of a top with sleeves. */
export const TOP_SIDES: readonly Side[] = ['front', 'back', 'leftSleeve', 'rightSleeve'];

/** What every chart of a top with sleeves gives. */
export const TOP_REQUIRED: readonly MeasureName[] = ['bodyLength', 'chestWidth', 'sleeveLength'];

/**
 * How a tee's other measures follow from its chest width. Source of the trend: proportions of an open T-shirt pattern
 * (FreeSewing Teagan 4.10, MIT), loosened to the fuller neck and armhole of a stock blank (common practice, no source).
 */
export const TEE_ESTIMATES: Estimates = {
  acrossShoulder: shoulders(0.86, 0.52),
  neckWidth: ofChest(72, 0.17),
  frontNeckDrop: ofChest(28, 0.15),
  backNeckDrop: ofChest(10, 0.035),
  collarRib: ofChest(9, 0.02),
  armhole: ofChest(57, 0.31),
  sleeveOpening: ofChest(38, 0.27),
  hemWidth: ofChest(0, 1),
};

/** A long sleeve's end: a knitted cuff (common practice, no source). */
export const CUFF_ESTIMATES: Estimates = { sleeveOpening: ofChest(45, 0.075), cuffRib: ofChest(34, 0.03) };

/**
 * A sweatshirt is cut wider and drawn in by ribs (common practice, no source). `hemWidth` is that of the rib as it lies.
 */
export const SWEAT_ESTIMATES: Estimates = {
  ...TEE_ESTIMATES,
  acrossShoulder: shoulders(0.88, 0.54),
  neckWidth: ofChest(80, 0.17),
  frontNeckDrop: ofChest(30, 0.13),
  backNeckDrop: ofChest(13, 0.035),
  collarRib: ofChest(12, 0.02),
  armhole: ofChest(62, 0.32),
  sleeveOpening: ofChest(48, 0.075),
  cuffRib: ofChest(36, 0.04),
  hemRib: ofChest(36, 0.04),
  hemWidth: ofChest(0, 0.88),
};

/** A hood on top of that: it has no collar rib. */
export const HOOD_ESTIMATES: Estimates = {
  ...omitted(SWEAT_ESTIMATES, 'collarRib'),
  neckWidth: ofChest(86, 0.18),
  frontNeckDrop: ofChest(40, 0.09),
  backNeckDrop: ofChest(10, 0.03),
  hoodHeight: ofChest(210, 0.235),
  hoodWidth: ofChest(150, 0.2),
  hoodFall: ofChest(120, 0.12),
  pocketWidth: ofChest(0, 0.58),
  pocketHeight: ofChest(50, 0.24),
};

/** A raglan has no shoulder seam; its armhole is taken from the neck (common practice, no source). */
export const RAGLAN_ESTIMATES: Estimates = {
  neckWidth: ofChest(72, 0.17),
  frontNeckDrop: ofChest(28, 0.15),
  backNeckDrop: ofChest(10, 0.035),
  collarRib: ofChest(9, 0.02),
  armhole: ofChest(57, 0.5),
  hemWidth: ofChest(0, 1),
};

/** The estimates without one: the kind does not have the measure. */
export function omitted(estimates: Estimates, measure: MeasureName): Estimates {
  const { [measure]: _, ...rest } = estimates;
  return rest;
}
