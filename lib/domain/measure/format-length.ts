import { type LengthUnit, type Micrometres, UM_PER_CM, UM_PER_INCH } from './length';

/** Finest fraction of an inch a tape reading shows (common practice, no source). */
const INCH_PARTS = 8;

/**
 * A length as the tape says it, unit included: `3 1/2 in`, `9 cm`, `12.7 cm`.
 * Inches to the nearest 1/8, centimetres to the nearest 0.1; a half goes away from zero.
 */
export function formatLength(um: Micrometres, unit: LengthUnit): string {
  return `${formatLengthValue(um, unit)} ${unit}`;
}

/** The same reading without its unit, for a field or a tape label that shows the unit beside it. */
export function formatLengthValue(um: Micrometres, unit: LengthUnit): string {
  return unit === 'in' ? inchFraction(um, INCH_PARTS) : trimDecimal(um / UM_PER_CM, 1);
}

/**
 * A length finer than the tape's step where that is what tells two values apart: doubles the fraction (inches) or
 * the decimals (centimetres) until `um` and `other` read differently, or 1/64 in and 0.01 cm are reached.
 */
export function formatLengthApart(um: Micrometres, other: Micrometres, unit: LengthUnit): string {
  if (unit === 'in') {
    let parts = INCH_PARTS;
    while (parts < 64 && um !== other && inchFraction(um, parts) === inchFraction(other, parts)) parts *= 2;
    return `${inchFraction(um, parts)} in`;
  }
  const places = um !== other && trimDecimal(um / UM_PER_CM, 1) === trimDecimal(other / UM_PER_CM, 1) ? 2 : 1;
  return `${trimDecimal(um / UM_PER_CM, places)} cm`;
}

/** A length in decimals, one place, as the sharpness line states it: `5.0 in`, `12.7 cm`. Rounds down: it is a limit. */
export function formatLimit(um: Micrometres, unit: LengthUnit): string {
  const value = unit === 'in' ? um / UM_PER_INCH : um / UM_PER_CM;
  return `${(Math.floor(value * 10 + 1e-6) / 10).toFixed(1)} ${unit}`;
}

function inchFraction(um: Micrometres, parts: number): string {
  const sign = um < 0 ? '-' : '';
  const count = Math.round((Math.abs(um) * parts) / UM_PER_INCH);
  const whole = Math.floor(count / parts);
  let top = count % parts;
  let bottom = parts;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return whole === 0 ? '0' : `${sign}${whole}`;
  return whole === 0 ? `${sign}${top}/${bottom}` : `${sign}${whole} ${top}/${bottom}`;
}

function trimDecimal(value: number, places: number): string {
  const scale = 10 ** places;
  const rounded = (Math.sign(value) * Math.round(Math.abs(value) * scale)) / scale + 0;
  return String(rounded);
}
