/** A step from pixel to pixel that is seen, and one that is more than what a JPEG leaves beside an edge. Of 255. */
const SEEN_STEP = 8;
const CLEAR_STEP = 32;
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
export function repeatsOf(acrossSteps: StepCounts, downSteps: StepCounts): number {
  const seen = repeatsIn(acrossSteps.seen, downSteps.seen);
  return seen > 1 ? seen : repeatsIn(acrossSteps.clear, downSteps.clear);
}

function repeatsIn(acrossCounts: Uint32Array, downCounts: Uint32Array): number {
  const across = latticeOf(acrossCounts);
  const down = across === null ? null : latticeOf(downCounts);
  if (across === null || down === null) return 1;
  return Math.abs(across - down) <= 0.1 * across ? Math.min(across, down) : 1;
}

/** How many lines step at each place along a side: steps that are seen, and clear ones alone. */
export type StepCounts = { readonly seen: Uint32Array; readonly clear: Uint32Array };

export function noSteps(lengthPx: number): StepCounts {
  return { seen: new Uint32Array(lengthPx), clear: new Uint32Array(lengthPx) };
}

/** Adds the places where a line steps from one pixel to the next. */
export function countSteps(line: Int16Array, { seen, clear }: StepCounts): void {
  for (let at = 1; at < line.length; at += 1) {
    const step = Math.abs((line[at] as number) - (line[at - 1] as number));
    if (step < SEEN_STEP) continue;
    seen[at] = (seen[at] as number) + 1;
    if (step >= CLEAR_STEP) clear[at] = (clear[at] as number) + 1;
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
  return wholeFactor(counts, places, first, last) ?? brokenFactor(places);
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

/** Gaps of one and two blocks tell how large a block is about; larger ones are counted in blocks then. */
const NEXT_BLOCK = 1.55;
/** A place lies no further from where so many blocks end than rounding moves it. */
const ROUNDING_PX = 1.1;
/** Blocks that are hardly larger than a pixel cannot be told from drawing at random. */
const LEAST_BROKEN_FACTOR = 1.4;

/** The factor when it is a broken number: places then lie where whole numbers of blocks end, rounded to pixels. */
function brokenFactor(places: readonly number[]): number | null {
  const [first = 0] = places;
  const last = places.at(-1) ?? first;
  const gaps = places.slice(1).map((at, index) => at - (places[index] ?? 0));
  const least = Math.min(...gaps);
  const near = gaps.filter((gap) => gap <= least * NEXT_BLOCK);
  let factor = near.reduce((sum, gap) => sum + gap, 0) / near.length;
  let blocks = 0;
  const ends = places.map((at, index) => {
    if (index > 0) blocks += Math.max(1, Math.round((gaps[index - 1] ?? 0) / factor));
    // The longer the way, the better it tells how large a block is.
    if (blocks >= ENOUGH_STEPS / 2) factor = (at - first) / blocks;
    return blocks;
  });
  if (factor < LEAST_BROKEN_FACTOR || factor > MOST_REPEATS) return null;
  if (places.length < (LATTICE_USED * (last - first)) / factor) return null;
  const even = places.filter((at, index) => Math.abs(at - first - (ends[index] ?? 0) * factor) <= ROUNDING_PX).length;
  return even >= ON_LATTICE * places.length ? factor : null;
}
