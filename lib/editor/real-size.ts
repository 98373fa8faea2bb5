/**
 * A wallet card, the one thing of known size that everybody has at hand: 85.60 × 53.98 mm, corners rounded by 3.18 mm
 * (ISO/IEC 7810, ID-1).
 */
export const WALLET_CARD_MM = { width: 85.6, height: 53.98, corner: 3.18 } as const;

/** What a screen without its size known is taken for: the 96 px to an inch that CSS counts with. */
export const USUAL_DOTS_PER_MM = 96 / 25.4;

/** The coarsest and the finest screens there are, in a screen's own dots per mm (common practice, no source). */
export const LEAST_DOTS_PER_MM = 2;
export const MOST_DOTS_PER_MM = 30;

/**
 * CSS pixels per millimetre of a screen with so many dots to the millimetre, seen at so many dots to a CSS pixel: what is
 * kept is the screen's, so that it stays true when the browser shows pages larger or smaller.
 */
export function realPxPerMm(dotsPerMm: number, dotsPerPx: number): number {
  return dotsPerMm / dotsPerPx;
}

/** What was kept of a screen, or null where that is no screen's. */
export function readDotsPerMm(kept: string | null): number | null {
  const dots = kept === null || kept.trim() === '' ? Number.NaN : Number(kept);
  return dots >= LEAST_DOTS_PER_MM && dots <= MOST_DOTS_PER_MM ? dots : null;
}
