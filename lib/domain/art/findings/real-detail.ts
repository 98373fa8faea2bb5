import type { Micrometres } from '../../measure/length';
import type { ArtFacts } from '../art-facts';
import { inkPxPerInch, type SharpnessLimits, sharpnessLimits } from '../sharpness';

/**
 * What of a picture the sharpness of a print hangs on. Facts are null where a picture has not been checked: its pixels then
 * count as they are.
 */
export type DetailOfInk = {
  readonly inkWidthPx: number;
  readonly facts: Pick<ArtFacts, 'detailShare'> | null;
};

/** The pixels across the ink that carry detail of their own: those of a picture that was enlarged do not all count. */
export function realInkWidthPx({ inkWidthPx, facts }: DetailOfInk): number {
  return Math.max(1, inkWidthPx * (facts?.detailShare ?? 1));
}

/** How wide the picture can be printed sharp, and fair. Micrometres of ink width; beyond the second it is soft. */
export function sharpnessHeadline(detail: DetailOfInk): SharpnessLimits {
  return sharpnessLimits(realInkWidthPx(detail));
}

/** Pixels of real detail to a printed inch, at an ink width. */
export function realPxPerInch(detail: DetailOfInk, widthUm: Micrometres): number {
  return inkPxPerInch(realInkWidthPx(detail), widthUm);
}
