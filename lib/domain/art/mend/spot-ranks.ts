/** Steps a cell is divided into each way when its thresholds are ranked: fine enough for half of 1/255. */
const STEPS = 256;

/** A cell's spot function: highest in the middle of a dot, lowest in the middle of the room between four dots. */
function spot(across: number, down: number): number {
  return Math.cos(2 * Math.PI * across) + Math.cos(2 * Math.PI * down);
}

/** Steps the spot function's values, -2 to 2, are told apart in: a table is asked for every pixel of a fade. */
const LEVELS = 1 << 14;

const kept = { thresholds: null as Float64Array | null };

/** The threshold at each level of the spot function; worked out once from all values of a cell in order. */
function thresholds(): Float64Array {
  if (kept.thresholds) return kept.thresholds;
  const counts = new Float64Array(LEVELS);
  for (let down = 0; down < STEPS; down += 1) {
    for (let across = 0; across < STEPS; across += 1) {
      const level = levelOf(spot((across + 0.5) / STEPS, (down + 0.5) / STEPS));
      counts[level] = (counts[level] ?? 0) + 1;
    }
  }
  const found = new Float64Array(LEVELS);
  let higher = 0;
  for (let level = LEVELS - 1; level >= 0; level -= 1) {
    higher += counts[level] ?? 0;
    found[level] = (higher - (counts[level] ?? 0) / 2) / (STEPS * STEPS);
  }
  kept.thresholds = found;
  return found;
}

function levelOf(value: number): number {
  return Math.min(LEVELS - 1, Math.max(0, Math.floor(((value + 2) / 4) * LEVELS)));
}

/**
 * The coverage from which a place of a dot's cell is solid, 0 to 1; the place in cells, so that only what is behind the point
 * counts. The share of a cell with thresholds under t is t: round dots that grow until they touch, then round holes.
 */
export function spotThreshold(across: number, down: number): number {
  return thresholds()[levelOf(spot(across, down))] ?? 1;
}
