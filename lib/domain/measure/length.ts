/**
 * Lengths in this project are whole micrometres, so that inches in eighths and centimetres in tenths are both exact.
 * The alias documents intent; every name that holds one ends in `Um`.
 */
export type Micrometres = number;

/** The unit a shop (and a sealed revision) shows and reads lengths in. */
export type LengthUnit = 'in' | 'cm';

/** Micrometres in an inch. Source: 1 in = 25.4 mm exactly (NIST SP 811, Appendix B; from memory). */
export const UM_PER_INCH = 25_400;
/** Micrometres in a centimetre (SI). */
export const UM_PER_CM = 10_000;
/** Micrometres in a millimetre (SI). */
export const UM_PER_MM = 1_000;

/** The longest length any field takes: ten metres, far beyond any garment. */
export const LONGEST_LENGTH_UM = 10_000_000;

/** Whole micrometres nearest to `um`; a half goes away from zero, so mirrored placements stay mirrored. */
export function roundUm(um: number): Micrometres {
  return Math.sign(um) * Math.round(Math.abs(um)) + 0;
}

/** Micrometres as millimetres, the unit of drawn geometry. */
export function mmFromUm(um: Micrometres): number {
  return um / UM_PER_MM;
}

/** Millimetres of drawn geometry as whole micrometres. */
export function umFromMm(mm: number): Micrometres {
  return roundUm(mm * UM_PER_MM);
}

/** Inches as whole micrometres. */
export function umFromInches(inches: number): Micrometres {
  return roundUm(inches * UM_PER_INCH);
}

/** The step the trade works in: 1/8 in, or 2 mm where the shop thinks in centimetres (common practice, no source). */
export function tradeStepUm(unit: LengthUnit): Micrometres {
  return unit === 'in' ? UM_PER_INCH / 8 : 2 * UM_PER_MM;
}
