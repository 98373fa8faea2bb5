import type { CellGrid } from './cell-grid';

/** Distances are told up to here; what is further from an edge is no thin place. In cells. */
export const FURTHEST_CELLS = 120;
const FURTHEST_SQUARED = FURTHEST_CELLS * FURTHEST_CELLS;

/** What lies beyond the grid: nothing, or more of the same. */
export type Beyond = 'nothing' | 'same';

/**
 * The squared distance of every marked cell to the nearest that is not marked, from middle to middle, in cells; 0 for those
 * that are not; of those in `within` only, where it is given. Exact up to `FURTHEST_CELLS`, which stands for all that is further. First down and up the columns, then
 * along each run of a row by the lower envelope of parabolas. Source: Felzenszwalb and Huttenlocher, Distance Transforms of
 * Sampled Functions, Theory of Computing 8 (2012).
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
  for (let y = 0; y < height; y += 1) {
    const row = y * width;
    let x = runFrom(far, within, row, 0, width, false);
    while (x < width) {
      const start = x;
      x = runFrom(far, within, row, x, width, true);
      const walls = {
        left: start > 0 ? far[row + start - 1] === 0 : beyond === 'nothing',
        right: x < width ? far[row + x] === 0 : beyond === 'nothing',
      };
      spreadRun(far, squared, row, start, x, walls, envelope);
      x = runFrom(far, within, row, x, width, false);
    }
  }
  return squared;
}

/** Where a run of cells that are measured ends, or, when none has begun, where the next begins. */
function runFrom(far: Uint8Array, within: Uint8Array, row: number, from: number, end: number, inRun: boolean): number {
  let x = from;
  while (x < end && (far[row + x] !== 0 && within[row + x] !== 0) === inRun) x += 1;
  return x;
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

/** Squared distances along one run of a row, from the column distances of its cells and from the walls at its ends. */
function spreadRun(
  far: Uint8Array,
  squared: Uint16Array,
  row: number,
  start: number,
  end: number,
  walls: { readonly left: boolean; readonly right: boolean },
  { at, height, from }: Envelope,
): void {
  let last = -1;
  const add = (x: number, square: number): void => {
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
  };
  if (walls.left) add(start - 1, 0);
  for (let x = start; x < end; x += 1) {
    const own = far[row + x] as number;
    // What is as far as is told can bring no cell nearer.
    if (own < FURTHEST_CELLS) add(x, own * own);
  }
  if (walls.right) add(end, 0);
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
