import type { CellGrid } from './cell-grid';

/** Distances are told up to here; what is further from an edge is no thin place. In cells. */
export const FURTHEST_CELLS = 48;
const FURTHEST_SQUARED = FURTHEST_CELLS * FURTHEST_CELLS;

/** What lies beyond the grid: nothing, or more of the same. */
export type Beyond = 'nothing' | 'same';

/**
 * The squared distance of every marked cell to the nearest that is not marked, from middle to middle, in cells; 0 for those
 * that are not. Exact up to `FURTHEST_CELLS`, which stands for all that is further. With `within`, only its cells are told
 * of, all of which have to be marked. First down and up the columns, then along each run of a row by the lower envelope of
 * parabolas. Source: Felzenszwalb and Huttenlocher, Distance Transforms of Sampled Functions, Theory of Computing 8 (2012).
 */
export function squaredDistances(grid: CellGrid, beyond: Beyond, within: Uint8Array = grid.cells): Uint16Array {
  const { width, height } = grid;
  const far = columnDistances(grid, beyond);
  const squared = new Uint16Array(width * height);
  const envelope = {
    at: new Int32Array(width + 2),
    height: new Int32Array(width + 2),
    from: new Float64Array(width + 3),
  };
  let index = within.indexOf(1);
  while (index >= 0) {
    const row = index - (index % width);
    const wall = within.indexOf(0, index);
    const end = wall < 0 ? row + width : Math.min(wall, row + width);
    const walls = {
      left: index > row ? far[index - 1] === 0 : beyond === 'nothing',
      right: end < row + width ? far[end] === 0 : beyond === 'nothing',
    };
    spreadRun(far, squared, row, index - row, end - row, walls, envelope);
    index = within.indexOf(1, end);
  }
  return squared;
}

/** The distance of every cell to the nearest unmarked one of its column, at most `FURTHEST_CELLS`. */
function columnDistances({ cells, width, height }: CellGrid, beyond: Beyond): Uint8Array {
  const far = new Uint8Array(width * height);
  const outside = beyond === 'nothing' ? 0 : FURTHEST_CELLS;
  for (let index = 0; index < far.length; index += 1) {
    if (cells[index] === 0) continue;
    const above = index < width ? outside : (far[index - width] as number);
    far[index] = above < FURTHEST_CELLS ? above + 1 : FURTHEST_CELLS;
  }
  const lastRow = width * (height - 1);
  for (let index = far.length - 1; index >= 0; index -= 1) {
    const own = far[index] as number;
    if (own < 2) continue;
    const below = index >= lastRow ? outside : (far[index + width] as number);
    if (below + 1 < own) far[index] = below + 1;
  }
  return far;
}

type Envelope = { readonly at: Int32Array; readonly height: Int32Array; readonly from: Float64Array };

type Walls = { readonly left: boolean; readonly right: boolean };

/**
 * Squared distances along one run of a row. Where nothing is near for a long way, the run is parted: what lies beyond that
 * way brings no cell nearer.
 */
function spreadRun(
  far: Uint8Array,
  squared: Uint16Array,
  row: number,
  start: number,
  end: number,
  walls: Walls,
  envelope: Envelope,
): void {
  let partStart = start;
  let left = walls.left;
  let x = start;
  while (x < end) {
    if (far[row + x] !== FURTHEST_CELLS) {
      x += 1;
      continue;
    }
    const alone = x;
    while (x < end && far[row + x] === FURTHEST_CELLS) x += 1;
    if (x - alone <= 2 * FURTHEST_CELLS) continue;
    spreadPart(far, squared, row, partStart, alone + FURTHEST_CELLS, { left, right: false }, envelope);
    squared.fill(FURTHEST_SQUARED, row + alone + FURTHEST_CELLS, row + x - FURTHEST_CELLS);
    partStart = x - FURTHEST_CELLS;
    left = false;
  }
  spreadPart(far, squared, row, partStart, end, { left, right: walls.right }, envelope);
}

/** Squared distances along a part of a run, from the column distances of its cells and from the walls at its ends. */
function spreadPart(
  far: Uint8Array,
  squared: Uint16Array,
  row: number,
  start: number,
  end: number,
  walls: Walls,
  envelope: Envelope,
): void {
  const { at, height, from } = envelope;
  let last = -1;
  if (walls.left) last = addParabola(envelope, last, start - 1, 0);
  for (let x = start; x < end; x += 1) {
    const own = far[row + x] as number;
    // What is as far as is told can bring no cell nearer.
    if (own < FURTHEST_CELLS) last = addParabola(envelope, last, x, own * own);
  }
  if (walls.right) last = addParabola(envelope, last, end, 0);
  if (last < 0) {
    squared.fill(FURTHEST_SQUARED, row + start, row + end);
    return;
  }
  from[last + 1] = Number.POSITIVE_INFINITY;
  let piece = 0;
  for (let x = start; x < end; x += 1) {
    while ((from[piece + 1] as number) < x) piece += 1;
    const dx = x - (at[piece] as number);
    const square = dx * dx + (height[piece] as number);
    squared[row + x] = Math.min(square, FURTHEST_SQUARED);
  }
}

/** Takes a cell's parabola into the envelope, from which those that it lies below are dropped; the place of the last. */
function addParabola({ at, height, from }: Envelope, before: number, x: number, square: number): number {
  let last = before;
  let meets = Number.NEGATIVE_INFINITY;
  while (last >= 0) {
    const lastAt = at[last] as number;
    meets = (square + x * x - (height[last] as number) - lastAt * lastAt) / (2 * (x - lastAt));
    if (meets > (from[last] as number)) break;
    last -= 1;
  }
  last += 1;
  at[last] = x;
  height[last] = square;
  from[last] = last === 0 ? Number.NEGATIVE_INFINITY : meets;
  return last;
}
