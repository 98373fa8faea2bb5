import { ciede2000 } from '../colour/ciede2000';
import { labOfHex, labOfRgb } from '../colour/lab';
import type { MendPicture } from './mend-picture';

/** Backing of a clean file still has this tolerance; a JPEG's never more than that. ΔE00 (common practice, no source). */
const LEAST_TOLERANCE = 3;
const MOST_TOLERANCE = 16;

/** Colours further than this from the backing are ink, not noise. ΔE00. */
const NO_NOISE = 14;

/** Pixels this like their neighbours, in every channel, are an area of their own colour, not noise. */
const EVEN = 2;

/** So much of the backing lies within the tolerance. */
const COVERED = 0.985;

/** Looked at are about this many pixels: more would not change the spread. */
const SAMPLED = 400_000;

/**
 * How far from its colour the backing strays, ΔE00: the noise that saving as JPEG leaves around ink, or that a camera has
 * everywhere. Pale areas of their own, such as cream on white, are not counted in.
 */
export function suggestedTolerance(picture: MendPicture, hex: string): number {
  const { rgba, widthPx, heightPx } = picture;
  const backing = labOfHex(hex);
  const away: number[] = [];
  const step = Math.max(1, Math.round(Math.sqrt((widthPx * heightPx) / SAMPLED)));
  for (let y = 0; y + 1 < heightPx; y += step) {
    for (let x = 0; x + 1 < widthPx; x += step) {
      const at = (y * widthPx + x) * 4;
      const difference = ciede2000(backing, labOfRgb(rgba[at] ?? 0, rgba[at + 1] ?? 0, rgba[at + 2] ?? 0));
      if (difference >= NO_NOISE) continue;
      if (difference > 1 && isEven(rgba, at, at + 4) && isEven(rgba, at, at + widthPx * 4)) continue;
      away.push(difference);
    }
  }
  away.sort((one, other) => one - other);
  const spread = away[Math.floor((away.length - 1) * COVERED)] ?? 0;
  return Math.min(MOST_TOLERANCE, Math.ceil(LEAST_TOLERANCE + spread * 1.5));
}

function isEven(rgba: Uint8Array, one: number, other: number): boolean {
  for (let channel = 0; channel < 3; channel += 1) {
    if (Math.abs((rgba[one + channel] ?? 0) - (rgba[other + channel] ?? 0)) > EVEN) return false;
  }
  return true;
}
