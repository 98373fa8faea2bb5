import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexHull } from '@/lib/domain/geometry/hull';
import type { Point } from '@/lib/domain/geometry/point';

const points = fc.array(fc.record({ x: fc.integer({ min: -50, max: 50 }), y: fc.integer({ min: -50, max: 50 }) }), {
  minLength: 3,
  maxLength: 80,
});

/** Twice the signed area of a triangle: positive when it runs clockwise as seen with y down. */
function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

function corners(hull: readonly Point[]): [Point, Point, Point][] {
  return hull.map((corner, index) => [
    hull[(index + hull.length - 1) % hull.length] ?? corner,
    corner,
    hull[(index + 1) % hull.length] ?? corner,
  ]);
}

describe('the convex hull', () => {
  it('turns the same way at every corner', () => {
    fc.assert(
      fc.property(points, (all) => {
        const hull = convexHull(all);
        fc.pre(hull.length >= 3);
        for (const [a, b, c] of corners(hull)) expect(turn(a, b, c)).toBeGreaterThan(0);
      }),
    );
  });

  it('has every point inside or on it, and only given points as corners', () => {
    fc.assert(
      fc.property(points, (all) => {
        const hull = convexHull(all);
        fc.pre(hull.length >= 3);
        for (const point of all)
          for (const [, a, b] of corners(hull)) expect(turn(a, b, point)).toBeGreaterThanOrEqual(0);
        for (const { x, y } of hull) expect(all.some((point) => point.x === x && point.y === y)).toBe(true);
      }),
    );
  });

  it('is the square round the points of a square', () => {
    const grid = [0, 1, 2, 3].flatMap((x) => [0, 1, 2, 3].map((y) => ({ x, y })));
    expect(convexHull(grid)).toHaveLength(4);
  });
});
