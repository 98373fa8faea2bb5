import type { CellGrid } from './cell-grid';
import { FURTHEST_CELLS } from './edge-distance';

/** Cells in the middle between two edges, nearest to them first: indices into the grid, with how far the edges are. */
export type Ridge = { readonly cells: Int32Array; readonly squared: Uint16Array };

const FURTHEST_SQUARED = FURTHEST_CELLS * FURTHEST_CELLS;

/** As many middles as are kept of a picture: the thinnest ones. */
const MOST_MIDDLES = 200_000;

const ROOT = Float32Array.from({ length: FURTHEST_SQUARED + 1 }, (_, square) => Math.sqrt(square));

/** On the way straight from an edge, distance grows by a cell a cell; in the middle it does not. As a squared slope. */
const STEEP = 4 * 0.74 ** 2;
/** Two cells on, distance has grown by less than this part of the way in no direction. */
const STILL = 0.62;

/** The middles of all strokes, from the squared distances of their cells: where distance no longer grows. */
export function ridgeOf({ width, height }: CellGrid, squared: Uint16Array): Ridge {
  const counts = new Int32Array(FURTHEST_SQUARED + 1);
  let found = new Int32Array(1 << 16);
  let count = 0;
  for (let y = 2; y < height - 2; y += 1) {
    const rowEnd = (y + 1) * width - 2;
    for (let index = y * width + 2; index < rowEnd; index += 1) {
      const own = squared[index] as number;
      if (own === 0 || own === FURTHEST_SQUARED || !isMiddle(squared, width, index)) continue;
      if (count === found.length) found = grown(found);
      found[count] = index;
      count += 1;
      counts[own] = (counts[own] as number) + 1;
    }
  }
  return { cells: sorted(found.subarray(0, count), squared, counts).subarray(0, MOST_MIDDLES), squared };
}

/** Whether distance stands still at a cell. Cells at the grid's rim are left out: what is thin there is thin further in too. */
function isMiddle(squared: Uint16Array, width: number, index: number): boolean {
  const across = root(squared, index + 1) - root(squared, index - 1);
  const down = root(squared, index + width) - root(squared, index - width);
  if (across * across + down * down > STEEP) return false;
  const own = root(squared, index);
  const least = own + 2 * STILL;
  const twoDown = 2 * width;
  if (root(squared, index + 2) >= least || root(squared, index - 2) >= least) return false;
  if (root(squared, index + twoDown) >= least || root(squared, index - twoDown) >= least) return false;
  const leastAslant = own + 2 * Math.SQRT2 * STILL;
  return (
    root(squared, index + twoDown + 2) < leastAslant &&
    root(squared, index - twoDown - 2) < leastAslant &&
    root(squared, index + twoDown - 2) < leastAslant &&
    root(squared, index - twoDown + 2) < leastAslant
  );
}

function root(squared: Uint16Array, index: number): number {
  return ROOT[squared[index] as number] as number;
}

function grown(cells: Int32Array): Int32Array<ArrayBuffer> {
  const more = new Int32Array(cells.length * 2);
  more.set(cells);
  return more;
}

/** Sorted by distance, counting how many there are of each. */
function sorted(cells: Int32Array, squared: Uint16Array, counts: Int32Array): Int32Array {
  let before = 0;
  for (let square = 0; square < counts.length; square += 1) {
    const here = counts[square] as number;
    counts[square] = before;
    before += here;
  }
  const result = new Int32Array(cells.length);
  for (const cell of cells) {
    const square = squared[cell] as number;
    const place = counts[square] as number;
    result[place] = cell;
    counts[square] = place + 1;
  }
  return result;
}
