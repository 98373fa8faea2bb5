import type { Point } from '../../geometry/point';
import { mmFromUm } from '../../measure/length';
import type { Tape } from '../kind-design';
import { WIDTH_TAKEN_BELOW_UM } from '../measures';

/** Fall of the shoulder seam per unit run, about 20 degrees (common practice, no source). */
export const SHOULDER_SLOPE = 0.364;
export const SHOULDER_RAD = Math.atan(SHOULDER_SLOPE);

/** How far the hem rises at the side seams as a laid-out top shows it, mm (for looks; measures do not depend on it). */
const HEM_RISE_MM = 5;

/**
 * The corners of the right half of a top (positive x), in the space of a flat, mm.
 *
 * ```
 *        neck            centre line is the left edge; y = 0 at `neck`
 *     \_____,___ shoulder
 *     |         \
 *     |          (
 *     |   armhole )
 *     |          underarm
 *     |           | chest (1 in lower)
 *     '---------- ' hem
 * ```
 */
export type TopFrame = {
  readonly neck: Point;
  readonly shoulder: Point;
  readonly underarm: Point;
  readonly chest: Point;
  readonly hem: Point;
  readonly bodyLengthMm: number;
  readonly hemRiseMm: number;
};

/** Corners of a top with set-in sleeves, or with none: every measure taken again between them comes back as entered. */
export function setInFrame(tape: Tape): TopFrame {
  const neck = { x: tape('neckWidth') / 2, y: 0 };
  const shoulder = onShoulder(neck, tape('acrossShoulder') / 2);
  const overhang = tape('chestWidth') / 2 - shoulder.x;
  return framed(tape, neck, shoulder, shoulder.y + Math.sqrt(tape('armhole') ** 2 - overhang ** 2));
}

/** Share of the chest that a raglan's shoulders are wide, for looks: nothing is measured to where they bend. */
const RAGLAN_SHOULDERS = 0.84;

/** Corners of a top with raglan sleeves: the armhole is taken from the high point of the shoulder. */
export function raglanFrame(tape: Tape): TopFrame {
  const neck = { x: tape('neckWidth') / 2, y: 0 };
  const reach = tape('chestWidth') / 2 - neck.x;
  const bend = neck.x + reach * 0.72;
  const shoulder = onShoulder(neck, Math.min(bend, (RAGLAN_SHOULDERS * tape('chestWidth')) / 2));
  return framed(tape, neck, shoulder, Math.sqrt(tape('armhole') ** 2 - reach ** 2));
}

/** The place on the shoulder line, or on its way up beyond the neck, at a distance from the centre line. */
export function onShoulder(neck: Point, x: number): Point {
  return { x, y: SHOULDER_SLOPE * (x - neck.x) };
}

function framed(tape: Tape, neck: Point, shoulder: Point, underarmY: number): TopFrame {
  const underarm = { x: tape('chestWidth') / 2, y: underarmY };
  const bodyLengthMm = tape('bodyLength');
  const hemRiseMm = Math.min(HEM_RISE_MM, bodyLengthMm / 100);
  return {
    neck,
    shoulder,
    underarm,
    chest: { x: underarm.x, y: underarm.y + mmFromUm(WIDTH_TAKEN_BELOW_UM) },
    hem: { x: tape('hemWidth') / 2, y: bodyLengthMm - hemRiseMm },
    bodyLengthMm,
    hemRiseMm,
  };
}
