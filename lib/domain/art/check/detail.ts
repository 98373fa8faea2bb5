import type { ArtFacts, Spot } from '../art-facts';
import { countSteps, repeatsOf } from './block-repeats';
import { countEdges, noEdges, sharpestEdgePx } from './edge-widths';
import type { PixelWords } from './pixel-classes';
import { sampledLines } from './sampled-lines';

/** Lines that are looked at: columns cost more, their pixels lie far apart in memory. */
const MOST_ROWS = 180;
const MOST_COLUMNS = 110;

/** Up to here edges are as sharp as pixels can show; a camera's are a little softer. Pixels (measured on pictures). */
const SHARP_EDGE_PX = { drawn: 1.35, photograph: 1.6 };
/**
 * A picture of a few straight edges, as a flag's, may have every one of them between two pixels: each then takes nearly two.
 */
const STRAIGHT_EDGE_PX = 1.9;
/** Rows and columns at which such a picture changes, with what a JPEG leaves beside them. */
const FEW_PLACES = 40;
/** The sharpest edges of an original; an enlarged picture's are as many times wider as it was enlarged by. */
const ORIGINAL_EDGE_PX = { drawn: 1.05, photograph: 1.15 };

/**
 * How much of a picture's detail along a side is real: 1 for an original, about 1 / k for one that was enlarged k times,
 * smoothly or by repeating pixels. 1 also where a picture has too few edges to say.
 */
export function detailShareOf(pixels: PixelWords, area: Spot, look: ArtFacts['look'], anyClear: boolean): number {
  const edges = noEdges();
  const across = new Uint32Array(area.width);
  const down = new Uint32Array(area.height);
  for (const [along, most, steps] of [
    ['rows', MOST_ROWS, across],
    ['columns', MOST_COLUMNS, down],
  ] as const) {
    for (const sampled of sampledLines(pixels, area, along, most, anyClear)) {
      countEdges(sampled, edges);
      countSteps(sampled.line, steps);
    }
  }
  const repeats = repeatsOf(across, down);
  if (repeats > 1) return 1 / repeats;
  const edgePx = sharpestEdgePx(edges);
  const isStraight = placesOf(across) + placesOf(down) < FEW_PLACES;
  if (edgePx === null || edgePx <= (isStraight ? STRAIGHT_EDGE_PX : SHARP_EDGE_PX[look])) return 1;
  return Math.min(1, ORIGINAL_EDGE_PX[look] / edgePx);
}

function placesOf(steps: Uint32Array): number {
  return steps.reduce((places, count) => (count > 0 ? places + 1 : places), 0);
}
