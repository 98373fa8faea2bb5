import type { CellGrid } from './cell-grid';

/**
 * Distances are told up to here, in cells: what is thicker than twice that is thin at no size anybody prints. 64 px of a
 * picture of 2 000, 2 mm of a print 3 in wide.
 */
export const FURTHEST_CELLS = 32;
const FURTHEST_SQUARED = FURTHEST_CELLS * FURTHEST_CELLS;

/** Memory that distances of one grid after the other are worked out in: it takes long to come by. */
export type DistanceRoom = { readonly far: Uint8Array; readonly squared: Uint16Array };

export function distanceRoom({ cells }: CellGrid): DistanceRoom {
  return { far: new Uint8Array(cells.length), squared: new Uint16Array(cells.length) };
}

/** What lies beyond the grid: nothing, or more of the same. */
export type Beyond = 'nothing' | 'same';

/**
 * The squared distance of every marked cell to the nearest that is not marked, from middle to middle, in cells; 0 for those
 * that are not, in the room's `squared`. Exact up to `FURTHEST_CELLS`, which stands for all that is further. With `within`, only its cells are told
 * of, all of which have to be marked. First down and up the columns, then along each run of a row by the lower envelope of
 * parabolas. Source: Felzenszwalb and Huttenlocher, Distance Transforms of Sampled Functions, Theory of Computing 8 (2012).
 */
export function squaredDistances(
  grid: CellGrid,
  beyond: Beyond,
  { far, squared }: DistanceRoom,
  within: Uint8Array = grid.cells,
): Uint16Array {
  const { width } = grid;
  spreadColumns(grid, beyond, far);
  squared.fill(0);
  const fours = foursOf(within);
  const envelope = {
    at: new Int32Array(width + 2),
    height: new Int32Array(width + 2),
    from: new Float64Array(width + 3),
  };
  for (let row = 0; row < squared.length; row += width) {
    const rowEnd = row + width;
    let index = endOfAlike(within, fours, row, rowEnd, 0);
    while (index < rowEnd) {
      const start = index;
      index = endOfAlike(within, fours, index, rowEnd, 1);
      const left = start > row ? far[start - 1] === 0 : beyond === 'nothing';
      const right = index < rowEnd ? far[index] === 0 : beyond === 'nothing';
      spreadRun(far, squared, row, start - row, index - row, left, right, envelope);
      index = endOfAlike(within, fours, index, rowEnd, 0);
    }
  }
  return squared;
}

/** Where cells that have a value end; four of them are looked at at once. */
function endOfAlike(cells: Uint8Array, fours: Uint32Array, from: number, end: number, value: 0 | 1): number {
  let index = from;
  while (index < end && (index & 3) !== 0 && cells[index] === value) index += 1;
  const four = value * FOUR;
  if ((index & 3) === 0) while (index + 3 < end && fours[index >> 2] === four) index += 4;
  while (index < end && cells[index] === value) index += 1;
  return index;
}

/** The distance of every cell to the nearest unmarked one of its column, at most `FURTHEST_CELLS`. */
function spreadColumns({ cells, width }: CellGrid, beyond: Beyond, far: Uint8Array): void {
  const outside = beyond === 'nothing' ? 0 : FURTHEST_CELLS;
  far.fill(0);
  spreadDown(cells, width, outside, far);
  spreadUp(width, outside, far);
}

function spreadDown(cells: Uint8Array, width: number, outside: number, far: Uint8Array): void {
  const [cellFours, farFours] = [foursOf(cells), foursOf(far)];
  const fours = width / 4;
  for (let four = 0; four < cellFours.length; four += 1) {
    const marked = cellFours[four] as number;
    if (marked === 0) continue;
    if (marked === FOUR && four >= fours && farFours[four - fours] === FOUR_FAR) {
      farFours[four] = FOUR_FAR;
      continue;
    }
    for (let index = four * 4; index < four * 4 + 4; index += 1) {
      if (cells[index] === 0) continue;
      const above = index < width ? outside : (far[index - width] as number);
      far[index] = Math.min(above + 1, FURTHEST_CELLS);
    }
  }
}

function spreadUp(width: number, outside: number, far: Uint8Array): void {
  const farFours = foursOf(far);
  const fours = width / 4;
  for (let four = farFours.length - 1; four >= 0; four -= 1) {
    const own = farFours[four] as number;
    const isLast = four + fours >= farFours.length;
    if (own === 0 || (own === FOUR_FAR && !isLast && farFours[four + fours] === FOUR_FAR)) continue;
    for (let index = four * 4; index < four * 4 + 4; index += 1) {
      const below = index + width < far.length ? (far[index + width] as number) : outside;
      far[index] = Math.min(far[index] as number, below + 1);
    }
  }
}

/** Four cells side by side that are all marked, and all as far as is told. */
const FOUR = 0x01010101;
const FOUR_FAR = FURTHEST_CELLS * FOUR;

/** A grid's cells by fours: rows are whole fours wide. */
function foursOf(cells: Uint8Array): Uint32Array {
  if (cells.length % 4 !== 0) throw new Error(`foursOf: ${cells.length} cells`);
  return new Uint32Array(cells.buffer, cells.byteOffset, cells.length / 4);
}

type Envelope = { readonly at: Int32Array; readonly height: Int32Array; readonly from: Float64Array };

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
  left: boolean,
  right: boolean,
  envelope: Envelope,
): void {
  let partStart = start;
  let leftWall = left;
  let x = start;
  while (x < end) {
    if (far[row + x] !== FURTHEST_CELLS) {
      x += 1;
      continue;
    }
    const alone = x;
    while (x < end && far[row + x] === FURTHEST_CELLS) x += 1;
    if (x - alone <= 2 * FURTHEST_CELLS) continue;
    spreadPart(far, squared, row, partStart, alone + FURTHEST_CELLS, leftWall, false, envelope);
    squared.fill(FURTHEST_SQUARED, row + alone + FURTHEST_CELLS, row + x - FURTHEST_CELLS);
    partStart = x - FURTHEST_CELLS;
    leftWall = false;
  }
  spreadPart(far, squared, row, partStart, end, leftWall, right, envelope);
}

/** Squared distances along a part of a run, from the column distances of its cells and from the walls at its ends. */
function spreadPart(
  far: Uint8Array,
  squared: Uint16Array,
  row: number,
  start: number,
  end: number,
  left: boolean,
  right: boolean,
  envelope: Envelope,
): void {
  const { at, height, from } = envelope;
  let last = -1;
  if (left) last = addParabola(envelope, last, start - 1, 0);
  for (let x = start; x < end; x += 1) {
    const own = far[row + x] as number;
    // What is as far as is told can bring no cell nearer.
    if (own < FURTHEST_CELLS) last = addParabola(envelope, last, x, own * own);
  }
  if (right) last = addParabola(envelope, last, end, 0);
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
