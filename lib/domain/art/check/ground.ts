import type { Spot } from '../art-facts';
import { INK_ALPHA } from '../ink';
import { channelDifference, type PixelWords } from './pixel-classes';
import type { RimColour } from './rim-colour';

/** A rim's colour with the difference of a channel up to which a pixel still has it. */
export type Ground = RimColour & { readonly tolerance: number };

const LEAST_TOLERANCE = 8;
const MOST_TOLERANCE = 40;
/** A flat colour's noise ends where differences are no more frequent than on the slopes of edges that follow. */
const LEVELS_AFTER = 32;
const NO_MORE_THAN = 2;
/** As many pixels as it takes to see that. */
const ENOUGH_PIXELS = 400_000;

/**
 * How far a picture's flat ground strays from its colour: next to nothing in a clean picture, by 20 or 30 levels of 255
 * round the edges of a JPEG. Found where the crowd of small differences thins out to what smooth edges have.
 */
export function groundOf(pixels: PixelWords, area: Spot, rim: RimColour): Ground {
  const counts = differenceCounts(pixels, area, rim);
  const noise = Math.min(MOST_TOLERANCE, Math.max(LEAST_TOLERANCE, 2 * rim.spread + 4));
  for (let level = noise; level < MOST_TOLERANCE; level += 1) {
    let after = 0;
    for (let next = level + 4; next < level + 4 + LEVELS_AFTER; next += 1) after += counts[next] as number;
    const here = ((counts[level] as number) + (counts[level + 1] as number)) / 2;
    if (here <= (NO_MORE_THAN * after) / LEVELS_AFTER + 2) return { ...rim, tolerance: level };
  }
  return { ...rim, tolerance: MOST_TOLERANCE };
}

function differenceCounts({ words, widthPx }: PixelWords, area: Spot, { red, green, blue }: RimColour): Uint32Array {
  const counts = new Uint32Array(256);
  const step = Math.max(1, Math.floor(Math.sqrt((area.width * area.height) / ENOUGH_PIXELS)));
  for (let y = area.y; y < area.y + area.height; y += 3 * step) {
    for (let x = area.x; x < area.x + area.width; x += Math.ceil(step / 3)) {
      const word = words[y * widthPx + x] as number;
      if (word >>> 24 < INK_ALPHA) continue;
      const difference = channelDifference(word, red, green, blue);
      counts[difference] = (counts[difference] as number) + 1;
    }
  }
  return counts;
}
