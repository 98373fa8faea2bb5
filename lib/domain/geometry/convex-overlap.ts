import { boxAround } from './box';
import type { Point } from './point';

/** Where two shapes lie over each other, and the shortest way one would have to go to be clear of the other. */
export type Overlap = { readonly at: Point; readonly depth: number };

/**
 * How two convex outlines lie over each other, in their own unit; null where they are apart or only touch. The depth is
 * the least overlap of their shadows across any of their edges (separating axis theorem); the place is the middle of what
 * their boxes share.
 */
export function convexOverlap(a: readonly Point[], b: readonly Point[]): Overlap | null {
  if (a.length < 3 || b.length < 3) throw new Error(`convexOverlap: outlines of ${a.length} and ${b.length} corners`);
  let depth = Number.POSITIVE_INFINITY;
  for (const outline of [a, b]) {
    for (const [index, from] of outline.entries()) {
      const to = outline[(index + 1) % outline.length] as Point;
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      if (length === 0) continue;
      const across = { x: (to.y - from.y) / length, y: (from.x - to.x) / length };
      depth = Math.min(depth, sharedLength(shadow(a, across), shadow(b, across)));
      if (depth <= 0) return null;
    }
  }
  return { at: middleOfBoth(a, b), depth };
}

type Span = { readonly from: number; readonly to: number };

function shadow(outline: readonly Point[], across: Point): Span {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { x, y } of outline) {
    const at = x * across.x + y * across.y;
    from = Math.min(from, at);
    to = Math.max(to, at);
  }
  return { from, to };
}

/** How far the one would have to be pushed out of the other along their common axis; negative where they are apart. */
function sharedLength(a: Span, b: Span): number {
  return Math.min(a.to - b.from, b.to - a.from);
}

function middleOfBoth(a: readonly Point[], b: readonly Point[]): Point {
  const [one, other] = [boxAround(a), boxAround(b)];
  const middle = (from: number, length: number, otherFrom: number, otherLength: number) =>
    (Math.max(from, otherFrom) + Math.min(from + length, otherFrom + otherLength)) / 2;
  return {
    x: middle(one.x, one.width, other.x, other.width),
    y: middle(one.y, one.height, other.y, other.height),
  };
}
