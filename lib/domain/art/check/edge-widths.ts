import type { Spot } from '../art-facts';
import type { PixelWords } from './pixel-classes';
import { type SampledLine, sampledLines } from './sampled-lines';

const MOST_ROWS = 280;
const MOST_COLUMNS = 160;

/** An edge is a steady rise or fall by this much at least; where a picture is pale, by less. Of 255. */
const CLEAR_EDGE = 48;
const PALE_EDGE = 20;
/** Steps below this are a flat colour's noise. */
const LEAST_STEP = 2;
/** An edge that runs aslant looks wider than it is; it counts when it changes this much less along itself. */
const ASLANT = 0.4;
/** What takes more pixels than this is a fade and no edge. */
const WIDEST_PX = 14;
/** Edges it takes to say anything. */
const ENOUGH_EDGES = 40;
/** A picture's sharpest edges are the part that says how sharp it can be. */
const SHARPEST = 0.15;

/**
 * How many pixels the sharpest edges of an area take from one side to the other: about 1 where a picture has all the detail
 * its pixels could hold, about as many as it was enlarged by where it was. Null where there are too few edges to say.
 */
export function sharpestEdgePx(pixels: PixelWords, area: Spot, anyClear: boolean): number | null {
  const [clear, pale] = [new Uint32Array(WIDEST_PX * 20), new Uint32Array(WIDEST_PX * 20)];
  for (const [along, most] of [
    ['rows', MOST_ROWS],
    ['columns', MOST_COLUMNS],
  ] as const) {
    for (const sampled of sampledLines(pixels, area, along, most, anyClear)) countEdges(sampled, clear, pale);
  }
  return quantile(clear) ?? quantile(pale);
}

/** Adds each edge of a line to the counts of widths, in twentieths of a pixel. */
function countEdges({ line, before, after }: SampledLine, clear: Uint32Array, pale: Uint32Array): void {
  let x = 1;
  while (x < line.length) {
    const first = (line[x] as number) - (line[x - 1] as number);
    const sign = Math.sign(first);
    if (Math.abs(first) < LEAST_STEP) {
      x += 1;
      continue;
    }
    const start = x - 1;
    let [steepest, at] = [0, x];
    for (; x < line.length; x += 1) {
      const step = sign * ((line[x] as number) - (line[x - 1] as number));
      if (step < LEAST_STEP) break;
      if (step > steepest) [steepest, at] = [step, x];
    }
    const rise = Math.abs((line[x - 1] as number) - (line[start] as number));
    if (rise < PALE_EDGE) continue;
    const aside = Math.abs((before[at] as number) - (after[at] as number)) / 2;
    const width = Math.round((20 * rise) / steepest);
    if (aside > ASLANT * steepest || width >= clear.length) continue;
    pale[width] = (pale[width] as number) + 1;
    if (rise >= CLEAR_EDGE) clear[width] = (clear[width] as number) + 1;
  }
}

function quantile(counts: Uint32Array): number | null {
  const total = counts.reduce((sum, count) => sum + count, 0);
  if (total < ENOUGH_EDGES) return null;
  let left = total * SHARPEST;
  const width = counts.findIndex((count) => {
    left -= count;
    return left < 0;
  });
  return width / 20;
}
