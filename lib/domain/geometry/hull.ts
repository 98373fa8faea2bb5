import type { Point } from './point';

/**
 * The convex hull of the points, clockwise as seen with y down, without repeated or collinear corners
 * (Andrew's monotone chain). Fewer than three distinct points come back as they are.
 */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  if (sorted.length < 3) return sorted;
  const lower = halfHull(sorted);
  const upper = halfHull(sorted.reverse());
  const hull = [...lower.slice(0, -1), ...upper.slice(0, -1)];
  return hull.length > 0 ? hull : sorted.slice(0, 1);
}

function halfHull(ordered: readonly Point[]): Point[] {
  const chain: Point[] = [];
  for (const point of ordered) {
    while (turnsBack(chain.at(-2), chain.at(-1), point)) chain.pop();
    chain.push(point);
  }
  return chain;
}

function turnsBack(a: Point | undefined, b: Point | undefined, c: Point): boolean {
  if (!a || !b) return false;
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) <= 0;
}
