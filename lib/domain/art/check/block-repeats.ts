/** A step from pixel to pixel that is seen. Of 255. */
const LEAST_STEP = 8;
/** So many different steps a side it takes to tell repeated pixels from a few straight edges. */
const ENOUGH_STEPS = 40;
/** Of all steps, those that fall on the lattice of repeated pixels. */
const ON_LATTICE = 0.98;
/** Of the lattice's places, those where anything steps: a rich picture steps at nearly all. */
const LATTICE_USED = 0.3;

/**
 * How many times each pixel was repeated, where a picture was enlarged without smoothing; 1 where it was not. Found in how
 * many places along a side anything changes at all, and whether these lie evenly.
 */
export function repeatsOf(acrossSteps: Uint32Array, downSteps: Uint32Array): number {
  const across = latticeOf(acrossSteps);
  const down = across === null ? null : latticeOf(downSteps);
  if (across === null || down === null) return 1;
  return Math.abs(across - down) <= 0.1 * across ? Math.min(across, down) : 1;
}

/** Adds the places where a line steps from one pixel to the next. */
export function countSteps(line: Int16Array, counts: Uint32Array): void {
  for (let at = 1; at < line.length; at += 1) {
    if (Math.abs((line[at] as number) - (line[at - 1] as number)) >= LEAST_STEP) {
      counts[at] = (counts[at] as number) + 1;
    }
  }
}

/** The distance from place to place where lines step, when these lie evenly; null when they do not. */
function latticeOf(counts: Uint32Array): number | null {
  const places: number[] = [];
  counts.forEach((count, at) => {
    if (count > 0) places.push(at);
  });
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined || places.length < ENOUGH_STEPS) return null;
  // Where almost every pixel steps, none is repeated.
  if (places.length > 0.8 * (last - first)) return null;
  return wholeFactor(counts, places, first, last) ?? evenFactor(places);
}

const MOST_REPEATS = 16;

/** The factor when it is a whole number: steps then leave the same remainder, even if some places are skipped. */
function wholeFactor(counts: Uint32Array, places: readonly number[], first: number, last: number): number | null {
  const all = counts.reduce((sum, count) => sum + count, 0);
  for (let factor = MOST_REPEATS; factor >= 2; factor -= 1) {
    if (places.length < (LATTICE_USED * (last - first)) / factor) continue;
    const remainders = new Float64Array(factor);
    for (const at of places) {
      remainders[at % factor] = (remainders[at % factor] as number) + (counts[at] as number);
    }
    if (Math.max(...remainders) >= ON_LATTICE * all) return factor;
  }
  return null;
}

const WINDOW = 16;
/** A row of so many places is as long as any other such row, but for rounding at its ends. */
const WINDOW_PX = 1.6;
const EVEN_WINDOWS = 0.85;

/** The factor when it is a broken number: places then come in turns of the whole numbers on both sides of it. */
function evenFactor(places: readonly number[]): number | null {
  const lengths = places.slice(WINDOW).map((at, index) => at - (places[index] ?? 0));
  const middle = [...lengths].sort((a, b) => a - b)[lengths.length >> 1] ?? 0;
  const even = lengths.filter((length) => Math.abs(length - middle) <= WINDOW_PX).length;
  return even >= EVEN_WINDOWS * lengths.length ? middle / WINDOW : null;
}
