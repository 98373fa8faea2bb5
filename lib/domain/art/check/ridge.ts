import type { CellGrid } from './cell-grid';
import { FURTHEST_CELLS } from './edge-distance';

/** Cells in the middle between two edges, nearest to them first: indices into the grid, with how far the edges are. */
export type Ridge = { readonly cells: Int32Array; readonly squared: Uint16Array };

const FURTHEST_SQUARED = FURTHEST_CELLS * FURTHEST_CELLS;

const FAR_PAIR = FURTHEST_SQUARED * 0x10001;

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
  // Where two cells side by side are both empty, or both far from any edge, neither is a middle.
  const pairs = new Uint32Array(squared.buffer, squared.byteOffset, squared.length >> 1);
  for (let index = 0; index < width * height; index += 1) {
    while ((index & 1) === 0 && (pairs[index >> 1] === 0 || pairs[index >> 1] === FAR_PAIR)) index += 2;
    const own = at(squared, index);
    if (own === 0 || own === FURTHEST_SQUARED) continue;
    if (!isCrest(squared, width, index, own) || !isMiddle(squared, width, index)) continue;
    if (count === found.length) found = grown(found);
    found[count] = index;
    count += 1;
    counts[own] = (counts[own] as number) + 1;
  }
  return { cells: sorted(found.subarray(0, count), squared, counts).subarray(0, MOST_MIDDLES), squared };
}

const ROUND = Array.from({ length: 24 }, (_, index) => {
  const angle = (index * Math.PI) / 12;
  return { x: Math.cos(angle), y: Math.sin(angle) };
});
/** How far off is looked: half again a stroke's thickness, which is twice the distance; and so many cells at least. */
const OFF = 3;
const LEAST_OFF_CELLS = 4;
/** What distance may be there to be the same: a line that wavers is let through, a tip or a corner is not. */
const LEAST_SAME = 0.6;
const MOST_SAME = 1.4;
/** Half-way to such a place there is this part of the room still. */
const OPEN = 0.5;
const CELLS_MORE = 1;

const around = new Float32Array(ROUND.length);
/** Between two places distance falls to this part of either at least. */
const DIP = 0.75;

/**
 * Which way a stroke runs that keeps its thickness round one of its middles: distance is much the same in two places or
 * more of a circle round it, and the angle, in radians, is that of one. Null for a tip or a corner, which have one at most.
 */
export function keptAlong({ width, height }: CellGrid, squared: Uint16Array, cell: number): number | null {
  const [x, y] = [cell % width, Math.floor(cell / width)];
  const own = root(squared, cell);
  const off = Math.max(OFF * own, LEAST_OFF_CELLS);
  let lowest = 0;
  for (let turn = 0; turn < ROUND.length; turn += 1) {
    const way = ROUND[turn] as (typeof ROUND)[number];
    const [px, py] = [Math.round(x + way.x * off), Math.round(y + way.y * off)];
    around[turn] = px < 0 || py < 0 || px >= width || py >= height ? 0 : root(squared, py * width + px);
    if ((around[turn] as number) < (around[lowest] as number)) lowest = turn;
  }
  // A place beyond another stroke is none of this one.
  const isOpen = (turn: number) => {
    const way = ROUND[turn] as (typeof ROUND)[number];
    const half = Math.round(y + (way.y * off) / 2) * width + Math.round(x + (way.x * off) / 2);
    return root(squared, half) >= OPEN * own - CELLS_MORE;
  };
  const least = Math.max(0.9, LEAST_SAME * own - CELLS_MORE);
  const count = placesAround(lowest, least, MOST_SAME * own + CELLS_MORE, isOpen);
  return wayThrough(count);
}

const MOST_PLACES = 8;
const places = new Int32Array(MOST_PLACES);

/** Gathers the peaks of what lies around that are neither too low nor too high, from the lowest place round to it again. */
function placesAround(lowest: number, least: number, most: number, isOpen: (turn: number) => boolean): number {
  let [count, peak, valley, at] = [0, 0, around[lowest] as number, 0];
  let climbing = false;
  for (let turn = 1; turn <= ROUND.length; turn += 1) {
    const there = around[(lowest + turn) % ROUND.length] as number;
    if (climbing && there > DIP * peak) {
      if (there > peak) [peak, at] = [there, turn];
      continue;
    }
    if (climbing) {
      const isSame = peak >= least && peak <= most;
      if (isSame && count < MOST_PLACES && isOpen((lowest + at) % ROUND.length)) {
        places[count] = lowest + at;
        count += 1;
      }
      climbing = false;
      valley = there;
    }
    valley = Math.min(valley, there);
    if (there > valley / DIP + 0.5) {
      climbing = true;
      [peak, at] = [there, turn];
    }
  }
  return count;
}

/** The angle at which a stroke runs through the two places that lie most nearly opposite; null where none do. */
function wayThrough(count: number): number | null {
  const half = ROUND.length / 2;
  let [best, way] = [half / 2, -1];
  for (let one = 0; one < count; one += 1) {
    for (let other = one + 1; other < count; other += 1) {
      const bend = (places[other] as number) - (places[one] as number) - half;
      if (Math.abs(bend) <= best) [best, way] = [Math.abs(bend), (places[one] as number) + bend / 2];
    }
  }
  return way < 0 ? null : (way * Math.PI) / half;
}

/** Whether no neighbour to the sides, or none above and below, is further from an edge. */
function isCrest(squared: Uint16Array, width: number, index: number, own: number): boolean {
  if (at(squared, index + 1) <= own && at(squared, index - 1) <= own) return true;
  return at(squared, index + width) <= own && at(squared, index - width) <= own;
}

/** A cell's squared distance; none beyond the grid. Asked for outright, an index below 0 would be looked up as a name. */
function at(squared: Uint16Array, index: number): number {
  return index < 0 || index >= squared.length ? 0 : (squared[index] as number);
}

/** Whether distance stands still at a cell. Beyond the grid's rows, and in the spare columns at their ends, there is none. */
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
  return ROOT[at(squared, index)] as number;
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
