import { convexHull } from '../geometry/hull';
import type { Point } from '../geometry/point';
import type { InkBox } from './art-ref';

/**
 * A pixel prints when its alpha is at least this, of 255. Below it a pixel holds under 3.2 % of its colour: the outermost
 * rim of a smooth edge, or dust that nobody sees (common practice, no source).
 */
export const INK_ALPHA = 8;

/** Most corners an ink hull keeps. A round picture has hundreds; past this the hull is cut by less than a pixel. */
export const MOST_HULL_CORNERS = 256;

/** What of a picture will print. `anyClear` is false for a picture whose every pixel prints: its background does too. */
export type Ink = {
  readonly inkBox: InkBox;
  readonly inkHull: [x: number, y: number][];
  readonly anyClear: boolean;
};

/**
 * The ink of a picture, from its pixels row by row: four bytes each, red, green, blue, alpha. Null when nothing prints.
 * Box and hull go round whole pixels: a single pixel at (0, 0) has the corners (0, 0) and (1, 1).
 */
export function inkOfPixels(rgba: Uint8Array, widthPx: number, heightPx: number): Ink | null {
  if (rgba.length !== widthPx * heightPx * 4) {
    throw new Error(`inkOfPixels: ${rgba.length} bytes for ${widthPx} × ${heightPx} px`);
  }
  // Alpha is a word's highest byte, so that a whole word tells whether its pixel prints.
  const whole = rgba.byteOffset % 4 === 0 ? rgba : rgba.slice();
  const words = new Uint32Array(whole.buffer, whole.byteOffset, widthPx * heightPx);
  const [leftSide, rightSide] = [hullSide(heightPx, 1), hullSide(heightPx, -1)];
  let [left, right, top, bottom] = [widthPx, 0, heightPx, 0];
  let anyClear = false;
  for (let y = 0; y < heightPx; y += 1) {
    const row = y * widthPx;
    const end = row + widthPx;
    const first = firstInk(words, row, end);
    anyClear ||= first > row;
    if (first >= end) continue;
    const last = lastInk(words, first, end - 1);
    anyClear ||= last < end - 1 || hasClear(words, first, last);
    const from = first - row;
    const to = last - row + 1;
    leftSide.add(from, y);
    leftSide.add(from, y + 1);
    rightSide.add(to, y);
    rightSide.add(to, y + 1);
    left = Math.min(left, from);
    right = Math.max(right, to);
    top = Math.min(top, y);
    bottom = y + 1;
  }
  if (bottom === 0) return null;
  const hull = withFewCorners(convexHull([...leftSide.corners(), ...rightSide.corners()]), MOST_HULL_CORNERS);
  return {
    inkBox: { x: left, y: top, width: right - left, height: bottom - top },
    inkHull: hull.map(({ x, y }) => [x, y]),
    anyClear,
  };
}

const INK_WORD = INK_ALPHA * 0x1000000;

// Pixels are looked at four at once where they are likely to be all alike.

function firstInk(words: Uint32Array, from: number, end: number): number {
  let index = from;
  while (
    index + 3 < end &&
    (at(words, index) | at(words, index + 1) | at(words, index + 2) | at(words, index + 3)) === 0
  )
    index += 4;
  while (index < end && at(words, index) < INK_WORD) index += 1;
  return index;
}

function lastInk(words: Uint32Array, first: number, from: number): number {
  let index = from;
  while (
    index - 3 > first &&
    (at(words, index) | at(words, index - 1) | at(words, index - 2) | at(words, index - 3)) === 0
  )
    index -= 4;
  while (at(words, index) < INK_WORD) index -= 1;
  return index;
}

const SOLID_WORD = 0xff000000;

function hasClear(words: Uint32Array, first: number, last: number): boolean {
  let index = first;
  while (
    index + 3 <= last &&
    (at(words, index) & at(words, index + 1) & at(words, index + 2) & at(words, index + 3)) >>> 0 >= SOLID_WORD
  )
    index += 4;
  for (; index <= last; index += 1) if ((words[index] as number) < INK_WORD) return true;
  return false;
}

function at(words: Uint32Array, index: number): number {
  return words[index] as number;
}

/** One side of a hull, built from corners that come downwards: those that a straight line passes by are dropped at once. */
function hullSide(heightPx: number, outward: 1 | -1): { add: (x: number, y: number) => void; corners: () => Point[] } {
  const xs = new Int32Array(2 * heightPx);
  const ys = new Int32Array(2 * heightPx);
  let count = 0;
  return {
    add: (x, y) => {
      while (count >= 2) {
        const [ax, ay] = [xs[count - 2] as number, ys[count - 2] as number];
        const [bx, by] = [xs[count - 1] as number, ys[count - 1] as number];
        if (outward * ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) < 0) break;
        count -= 1;
      }
      xs[count] = x;
      ys[count] = y;
      count += 1;
    },
    corners: () => Array.from({ length: count }, (_, index) => ({ x: xs[index] as number, y: ys[index] as number })),
  };
}

/**
 * A convex hull with no more than `most` corners: takes out the corner that lies nearest to the line between its
 * neighbours, again and again. Corners that touch the hull's box stay, so that the box does.
 */
export function withFewCorners(hull: readonly Point[], most: number): Point[] {
  const kept = [...hull];
  const xs = hull.map(({ x }) => x);
  const ys = hull.map(({ y }) => y);
  const edges = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
  const onBox = ({ x, y }: Point) => x === edges.left || x === edges.right || y === edges.top || y === edges.bottom;
  while (kept.length > most) {
    let least = Number.POSITIVE_INFINITY;
    let leastIndex = -1;
    for (const [index, corner] of kept.entries()) {
      const before = kept[(index + kept.length - 1) % kept.length];
      const after = kept[(index + 1) % kept.length];
      if (!before || !after || onBox(corner)) continue;
      const height = heightOver(before, after, corner);
      if (height < least) [least, leastIndex] = [height, index];
    }
    if (leastIndex < 0) break;
    kept.splice(leastIndex, 1);
  }
  return kept;
}

/** How far a point lies from the line through two others. */
function heightOver(from: Point, to: Point, { x, y }: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return Math.abs(dx * (y - from.y) - dy * (x - from.x)) / Math.hypot(dx, dy);
}
