import { type Micrometres, roundUm, UM_PER_INCH } from '../measure/length';

/**
 * Ink pixels per printed inch at which a transfer is sharp, and below which it is soft (common practice, no source).
 */
export const SHARP_INK_PX_PER_INCH = 300;
export const FAIR_INK_PX_PER_INCH = 200;

/** How wide a picture can be printed before it is no longer sharp, and no longer fair. Micrometres of ink width. */
export type SharpnessLimits = { readonly sharpUm: Micrometres; readonly fairUm: Micrometres };

/** The widest sharp and fair print of a picture whose ink is `inkWidthPx` pixels wide. 1500 px is sharp to 5.00 in. */
export function sharpnessLimits(inkWidthPx: number): SharpnessLimits {
  return {
    sharpUm: roundUm((inkWidthPx / SHARP_INK_PX_PER_INCH) * UM_PER_INCH),
    fairUm: roundUm((inkWidthPx / FAIR_INK_PX_PER_INCH) * UM_PER_INCH),
  };
}

export type Sharpness = 'sharp' | 'fair' | 'soft';

/** How a picture prints at a width. */
export function sharpnessAt(inkWidthPx: number, widthUm: Micrometres): Sharpness {
  const { sharpUm, fairUm } = sharpnessLimits(inkWidthPx);
  if (widthUm <= sharpUm) return 'sharp';
  return widthUm <= fairUm ? 'fair' : 'soft';
}

/** Ink pixels per printed inch at a width. */
export function inkPxPerInch(inkWidthPx: number, widthUm: Micrometres): number {
  return (inkWidthPx * UM_PER_INCH) / widthUm;
}
