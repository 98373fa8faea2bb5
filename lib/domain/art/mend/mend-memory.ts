import type { MendStep } from './recipe';

/**
 * The most memory one step may take, picture and result included: 700 MB, so that a shop's small computer lives through it
 * (common practice, no source).
 */
export const MOST_MEND_BYTES = 700_000_000;

/** Working memory of a mend beside the picture and its result, bytes a pixel. */
const WORKING_BYTES: Record<MendStep['mend'], number> = {
  crop: 0,
  erase: 0,
  trim: 0,
  recolour: 0,
  turn: 0,
  hardenEdge: 0,
  knockOut: 3,
  clearSpecks: 8,
  thicken: 9,
  dots: 13,
  redraw: 8,
};

/** The most bytes a step takes at once on a picture of this size, with a result of another size where it has one. */
export function mendBytes(mend: MendStep['mend'], pixels: number, resultPixels = pixels): number {
  const larger = Math.max(pixels, resultPixels);
  return pixels * 4 + resultPixels * 4 + larger * WORKING_BYTES[mend];
}
