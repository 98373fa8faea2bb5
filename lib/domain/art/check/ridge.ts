import type { CellGrid } from './cell-grid';
import { FURTHEST_CELLS } from './edge-distance';

/** Cells in the middle between two edges, nearest to them first: indices into the grid, with how far the edges are. */
export type Ridge = { readonly cells: Int32Array; readonly squared: Uint16Array };

/** As many middles as are kept of a picture: the thinnest ones. */
const MOST_MIDDLES = 200_000;

const ROOT = Float32Array.from({ length: FURTHEST_CELLS * FURTHEST_CELLS + 1 }, (_, square) => Math.sqrt(square));

/** On the way straight from an edge, distance grows by a cell a cell; in the middle it does not. As a squared slope. */
const STEEP = 4 * 0.74 ** 2;
/** Two cells on, distance has grown by less than this part of the way in no direction. */
const STILL = 0.62;

/** The middles of all strokes, from the squared distances of their cells: where distance no longer grows. */
export function ridgeOf({ width, height }: CellGrid, squared: Uint16Array): Ridge {
  const counts = new Int32Array(FURTHEST_CELLS * FURTHEST_CELLS + 1);
  let found = new Int32Array(1 << 16);
  let count = 0;
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const index = y * width + x;
      const own = squared[index] as number;
      if (own === 0 || own === FURTHEST_CELLS * FURTHEST_CELLS) continue;
      if (!isMiddle(squared, width, height, x, y)) continue;
      if (count === found.length) found = grown(found);
      found[count] = index;
      count += 1;
      counts[own] = (counts[own] as number) + 1;
    }
  }
  return { cells: sorted(found.subarray(0, count), squared, counts).subarray(0, MOST_MIDDLES), squared };
}

function isMiddle(squared: Uint16Array, width: number, height: number, x: number, y: number): boolean {
  const distance = (px: number, py: number) =>
    px < 0 || py < 0 || px >= width || py >= height ? 0 : (ROOT[squared[py * width + px] as number] as number);
  const across = distance(x + 1, y) - distance(x - 1, y);
  const down = distance(x, y + 1) - distance(x, y - 1);
  if (across * across + down * down > STEEP) return false;
  const least = distance(x, y) + 2 * STILL;
  const leastAslant = distance(x, y) + 2 * Math.SQRT2 * STILL;
  return (
    distance(x + 2, y) < least &&
    distance(x - 2, y) < least &&
    distance(x, y + 2) < least &&
    distance(x, y - 2) < least &&
    distance(x + 2, y + 2) < leastAslant &&
    distance(x - 2, y - 2) < leastAslant &&
    distance(x + 2, y - 2) < leastAslant &&
    distance(x - 2, y + 2) < leastAslant
  );
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
