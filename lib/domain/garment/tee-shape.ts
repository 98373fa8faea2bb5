import { along, distance, type Point } from '../geometry/point';
import { mmFromUm } from '../measure/length';
import { CHEST_BELOW_ARMHOLE_UM, type MeasureName } from './measures';

/** Fall of the shoulder seam per unit run, about 20 degrees (common practice, no source). */
export const SHOULDER_SLOPE = 0.364;

/** How far the hem rises at the side seams as a laid-out tee shows it, mm (for looks; measures do not depend on it). */
const HEM_RISE_MM = 5;

/** Share of the sleeve opening that the armhole spans across the sleeve; it sets how steeply the sleeve falls. */
const SLEEVE_FALL = 0.92;

/**
 * The corners of the right half of a tee (positive x), in the space of a flat, mm.
 *
 * ```
 *   ribTop  neck            centre line is the left edge; y = 0 at `neck`
 *      \_____,___ shoulder
 *      |     seam \\______ sleeveTop
 *      |          (       \
 *      |     armhole )     sleeveBottom
 *      |      underarm'---'
 *      |            | chest (1 in lower)
 *      '------------' hem
 * ```
 */
export type TeeCorners = {
  readonly ribTop: Point;
  readonly neck: Point;
  readonly shoulder: Point;
  readonly underarm: Point;
  readonly chest: Point;
  readonly hem: Point;
  readonly hemRiseMm: number;
  readonly sleeveTop: Point;
  readonly sleeveBottom: Point;
  readonly sleeveAngleRad: number;
};

/** Places the corners so that every measure taken again between them comes back as entered. */
export function teeCorners(um: Record<MeasureName, number>): TeeCorners {
  const mm = (measure: MeasureName) => mmFromUm(um[measure]);
  const neck = { x: mm('neckWidth') / 2, y: 0 };
  const shoulder = { x: mm('acrossShoulder') / 2, y: SHOULDER_SLOPE * (mm('acrossShoulder') / 2 - neck.x) };
  const slopeRad = Math.atan(SHOULDER_SLOPE);
  const ribTop = along(neck, slopeRad + Math.PI, mm('collarRib') * 0.92);
  const overhang = mm('chestWidth') / 2 - shoulder.x;
  const underarm = { x: mm('chestWidth') / 2, y: shoulder.y + Math.sqrt(mm('armhole') ** 2 - overhang ** 2) };
  const chest = { x: underarm.x, y: underarm.y + mmFromUm(CHEST_BELOW_ARMHOLE_UM) };
  const hemRiseMm = Math.min(HEM_RISE_MM, mm('bodyLength') / 100);
  const hem = { x: mm('hemWidth') / 2, y: mm('bodyLength') - hemRiseMm };
  const armholeRad = Math.atan2(underarm.y - shoulder.y, underarm.x - shoulder.x);
  const spread = Math.min(0.98, (mm('sleeveOpening') * SLEEVE_FALL) / distance(shoulder, underarm));
  const sleeveAngleRad = armholeRad - Math.asin(spread);
  const sleeveTop = along(shoulder, sleeveAngleRad, mm('sleeveLength'));
  const sleeveBottom = along(sleeveTop, sleeveAngleRad + Math.PI / 2, mm('sleeveOpening'));
  return { ribTop, neck, shoulder, underarm, chest, hem, hemRiseMm, sleeveTop, sleeveBottom, sleeveAngleRad };
}
