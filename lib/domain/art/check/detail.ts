import type { ArtFacts, Spot } from '../art-facts';
import { repeatsOf } from './block-repeats';
import { sharpestEdgePx } from './edge-widths';
import type { PixelWords } from './pixel-classes';

/** Up to here edges are as sharp as pixels can show; a camera's are a little softer. Pixels (measured on pictures). */
const SHARP_EDGE_PX = { drawn: 1.35, photograph: 1.6 };
/** The sharpest edges of an original; an enlarged picture's are as many times wider as it was enlarged by. */
const ORIGINAL_EDGE_PX = { drawn: 1.05, photograph: 1.15 };

/**
 * How much of a picture's detail along a side is real: 1 for an original, about 1 / k for one that was enlarged k times,
 * smoothly or by repeating pixels. 1 also where a picture has too few edges to say.
 */
export function detailShareOf(pixels: PixelWords, area: Spot, look: ArtFacts['look'], anyClear: boolean): number {
  const repeats = repeatsOf(pixels, area, anyClear);
  if (repeats > 1) return 1 / repeats;
  const edgePx = sharpestEdgePx(pixels, area, anyClear);
  if (edgePx === null || edgePx <= SHARP_EDGE_PX[look]) return 1;
  return Math.min(1, ORIGINAL_EDGE_PX[look] / edgePx);
}
