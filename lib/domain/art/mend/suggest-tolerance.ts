import { ciede2000 } from '../colour/ciede2000';
import { labOfHex, labOfRgb } from '../colour/lab';
import type { MendPicture } from './mend-picture';

/** Backing of a clean file still has this tolerance; a JPEG's never more than that. ΔE00 (common practice, no source). */
const LEAST_TOLERANCE = 3;
const MOST_TOLERANCE = 18;

/** Colours further than this from the backing are ink at the rim, not noise. ΔE00. */
const NO_NOISE = 25;

/** So much of the backing along the rim lies within the tolerance. */
const COVERED = 0.995;

/**
 * How far from its colour the backing strays, ΔE00, told by the picture's rim: the noise of a JPEG or of a camera, and a
 * little more, since noise is stronger beside ink than out there.
 */
export function suggestedTolerance({ rgba, widthPx, heightPx }: MendPicture, hex: string): number {
  const backing = labOfHex(hex);
  const away: number[] = [];
  const look = (x: number, y: number) => {
    const at = (y * widthPx + x) * 4;
    const difference = ciede2000(backing, labOfRgb(rgba[at] ?? 0, rgba[at + 1] ?? 0, rgba[at + 2] ?? 0));
    if (difference < NO_NOISE) away.push(difference);
  };
  for (let x = 0; x < widthPx; x += 1) {
    look(x, 0);
    look(x, heightPx - 1);
  }
  for (let y = 0; y < heightPx; y += 1) {
    look(0, y);
    look(widthPx - 1, y);
  }
  away.sort((one, other) => one - other);
  const spread = away[Math.floor((away.length - 1) * COVERED)] ?? 0;
  return Math.min(MOST_TOLERANCE, Math.ceil(LEAST_TOLERANCE + spread * 1.5));
}
