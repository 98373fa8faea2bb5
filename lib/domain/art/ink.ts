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
  const corners: Point[] = [];
  let [left, right, top, bottom] = [widthPx, 0, heightPx, 0];
  let anyClear = false;
  for (let y = 0; y < heightPx; y += 1) {
    const row = y * widthPx * 4 + 3;
    const end = row + widthPx * 4;
    let first = row;
    while (first < end && (rgba[first] ?? 0) < INK_ALPHA) first += 4;
    anyClear ||= first > row;
    if (first >= end) continue;
    let last = end - 4;
    while ((rgba[last] ?? 0) < INK_ALPHA) last -= 4;
    anyClear ||= last < end - 4 || hasClear(rgba, first, last);
    const from = (first - row) / 4;
    const to = (last - row) / 4 + 1;
    corners.push({ x: from, y }, { x: to, y }, { x: from, y: y + 1 }, { x: to, y: y + 1 });
    left = Math.min(left, from);
    right = Math.max(right, to);
    top = Math.min(top, y);
    bottom = y + 1;
  }
  if (corners.length === 0) return null;
  const hull = withFewCorners(convexHull(corners), MOST_HULL_CORNERS);
  return {
    inkBox: { x: left, y: top, width: right - left, height: bottom - top },
    inkHull: hull.map(({ x, y }) => [x, y]),
    anyClear,
  };
}

function hasClear(rgba: Uint8Array, firstAlpha: number, lastAlpha: number): boolean {
  for (let index = firstAlpha; index <= lastAlpha; index += 4) if ((rgba[index] ?? 0) < INK_ALPHA) return true;
  return false;
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
