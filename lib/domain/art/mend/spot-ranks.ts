/** Steps a cell is divided into each way when its thresholds are ranked: fine enough for half of 1/255. */
const STEPS = 256;

/** A cell's spot function: highest in the middle of a dot, lowest in the middle of the room between four dots. */
function spot(across: number, down: number): number {
  return Math.cos(2 * Math.PI * across) + Math.cos(2 * Math.PI * down);
}

const ranked = { values: null as Float64Array | null };

/** All values of a cell in order; worked out once. */
function rankedValues(): Float64Array {
  if (ranked.values) return ranked.values;
  const values = new Float64Array(STEPS * STEPS);
  for (let down = 0; down < STEPS; down += 1) {
    for (let across = 0; across < STEPS; across += 1) {
      values[down * STEPS + across] = spot((across + 0.5) / STEPS, (down + 0.5) / STEPS);
    }
  }
  ranked.values = values.sort();
  return ranked.values;
}

/**
 * The coverage from which a place of a dot's cell is solid, 0 to 1; the place in cells, so that only what is behind the point
 * counts. The share of a cell with thresholds under t is t: round dots that grow until they touch, then round holes.
 */
export function spotThreshold(across: number, down: number): number {
  const values = rankedValues();
  const value = spot(across, down);
  let [low, high] = [0, values.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((values[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  return 1 - low / values.length;
}
