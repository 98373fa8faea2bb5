import type { SampledLine } from './sampled-lines';

/** An edge is a steady rise or fall by this much at least; where a picture is pale, by less. Of 255. */
const CLEAR_EDGE = 48;
const PALE_EDGE = 20;
/** Steps below this are a flat colour's noise. */
const LEAST_STEP = 2;
/** An edge that runs aslant is told along rows or columns, whichever it crosses more nearly at right angles. */
const ASLANT = 1.05;
/** Of its steepest step, what still belongs to an edge and not to a glow it stands in. */
const STEEP = 0.2;
/** What takes more pixels than this is a fade and no edge. */
const WIDEST_PX = 14;
/** Edges it takes to say anything. */
const ENOUGH_EDGES = 40;
/** A picture's sharpest edges are the part that says how sharp it can be. */
const SHARPEST = 0.15;

/** Counts of edges by their width in twentieths of a pixel: those of clear contrast, and pale ones too. */
export type EdgeWidths = { readonly clear: Uint32Array; readonly pale: Uint32Array };

export function noEdges(): EdgeWidths {
  return { clear: new Uint32Array(WIDEST_PX * 20), pale: new Uint32Array(WIDEST_PX * 20) };
}

/**
 * How many pixels the sharpest edges take from one side to the other: about 1 where a picture has all the detail its pixels
 * could hold, about as many as it was enlarged by where it was. Null where there are too few edges to say.
 */
export function sharpestEdgePx({ clear, pale }: EdgeWidths): number | null {
  return quantile(clear) ?? quantile(pale);
}

/** Adds each edge of a line. */
export function countEdges({ line, changeAcross }: SampledLine, { clear, pale }: EdgeWidths): void {
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
    const aslant = changeAcross(at) / steepest;
    // Along a line that crosses it aslant, an edge is longer than it is wide.
    const width = Math.round((20 * steepRise(line, at, sign * steepest)) / (steepest * Math.hypot(1, aslant)));
    if (width >= clear.length || aslant > ASLANT) continue;
    pale[width] = (pale[width] as number) + 1;
    if (rise >= CLEAR_EDGE) clear[width] = (clear[width] as number) + 1;
  }
}

/** How much an edge rises where it is steep: a glow it stands in rises too, but slowly. */
function steepRise(line: Int16Array, at: number, steepest: number): number {
  const least = STEEP * Math.abs(steepest);
  const step = (x: number) => Math.sign(steepest) * ((line[x] as number) - (line[x - 1] as number));
  let rise = Math.abs(steepest);
  for (let x = at - 1; x > 0 && step(x) >= least; x -= 1) rise += step(x);
  for (let x = at + 1; x < line.length && step(x) >= least; x += 1) rise += step(x);
  return rise;
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
