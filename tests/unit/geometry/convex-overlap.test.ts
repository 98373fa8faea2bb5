import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isInside } from '@/lib/domain/geometry/clearance';
import { convexOverlap } from '@/lib/domain/geometry/convex-overlap';
import { convexHull } from '@/lib/domain/geometry/hull';
import type { Point } from '@/lib/domain/geometry/point';

const coordinate = fc.integer({ min: -40, max: 40 });
const outline = fc
  .array(fc.record({ x: coordinate, y: coordinate }), { minLength: 3, maxLength: 9 })
  .map(convexHull)
  .filter((hull) => hull.length >= 3);

const DIRECTIONS = 360;

function moved(points: readonly Point[], angle: number, by: number): Point[] {
  return points.map(({ x, y }) => ({ x: x + Math.cos(angle) * by, y: y + Math.sin(angle) * by }));
}

/** Whether any of a grid of places lies in both: another way to the same answer. */
function sharesAPlace(a: readonly Point[], b: readonly Point[]): boolean {
  const [one, other] = [a, b].map((points) => [...points, points[0] as Point]) as [Point[], Point[]];
  for (let x = -40; x <= 40; x += 0.5) {
    for (let y = -40; y <= 40; y += 0.5) {
      const place = { x: x + 0.13, y: y + 0.17 };
      if (isInside(place, one) && isInside(place, other)) return true;
    }
  }
  return false;
}

describe('how two convex outlines lie over each other', () => {
  it('finds every overlap that places on a grid show', () => {
    fc.assert(
      fc.property(outline, outline, (a, b) => {
        if (sharesAPlace(a, b)) expect(convexOverlap(a, b)?.depth).toBeGreaterThan(0);
      }),
      { numRuns: 40 },
    );
  });

  it('gives the shortest way out: in no direction is a shorter one enough, and in one it is', () => {
    fc.assert(
      fc.property(outline, outline, (a, b) => {
        const found = convexOverlap(a, b);
        if (!found) return;
        const angles = Array.from({ length: DIRECTIONS }, (_, step) => (step / DIRECTIONS) * 2 * Math.PI);
        const clear = (by: number) => angles.some((angle) => convexOverlap(moved(a, angle, by), b) === null);
        expect(clear(found.depth * 0.99)).toBe(false);
        // The directions tried are a degree apart, so the nearest is off by half a degree at most.
        expect(clear((found.depth + 1e-6) / Math.cos(Math.PI / DIRECTIONS) + 1e-6)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('says nothing of outlines that only touch', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 0, y: 10 },
    ];
    expect(convexOverlap(square, moved(square, 0, 10))).toBeNull();
    expect(convexOverlap(square, moved(square, 0, 7))?.depth).toBeCloseTo(3, 9);
  });
});
