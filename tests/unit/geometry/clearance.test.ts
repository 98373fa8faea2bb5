import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chainsMeet, clearanceBetween, isInside } from '@/lib/domain/geometry/clearance';
import { convexHull } from '@/lib/domain/geometry/hull';
import { between, distance, type Point } from '@/lib/domain/geometry/point';

const coordinate = fc.double({ min: -40, max: 40, noNaN: true, noDefaultInfinity: true });
const point: fc.Arbitrary<Point> = fc.record({ x: coordinate, y: coordinate });
const chain = fc.array(point, { minLength: 2, maxLength: 5 });

const SAMPLE_MM = 0.1;

/** Every 0.1 mm along a chain. */
function sampled(points: readonly Point[]): Point[] {
  return points.slice(1).flatMap((end, index) => {
    const start = points[index] ?? end;
    const steps = Math.max(1, Math.ceil(distance(start, end) / SAMPLE_MM));
    return Array.from({ length: steps + 1 }, (_, step) => between(start, end, step / steps));
  });
}

function bruteForce(a: readonly Point[], b: readonly Point[]): number {
  const others = sampled(b);
  let nearest = Number.POSITIVE_INFINITY;
  for (const from of sampled(a)) {
    for (const to of others) nearest = Math.min(nearest, (from.x - to.x) ** 2 + (from.y - to.y) ** 2);
  }
  return Math.sqrt(nearest);
}

describe('the clearance between two chains', () => {
  it('agrees with sampling both every 0.1 mm', () => {
    fc.assert(
      fc.property(chain, chain, (a, b) => {
        const { distance: exact } = clearanceBetween(a, b);
        const sampledDistance = bruteForce(a, b);
        expect(exact).toBeLessThanOrEqual(sampledDistance + 1e-9);
        expect(sampledDistance - exact).toBeLessThanOrEqual(0.2);
      }),
      { numRuns: 60 },
    );
  });

  it('is the same from either side and lies between the places it names', () => {
    fc.assert(
      fc.property(chain, chain, (a, b) => {
        const there = clearanceBetween(a, b);
        expect(clearanceBetween(b, a).distance).toBeCloseTo(there.distance, 6);
        expect(distance(there.from, there.to)).toBeCloseTo(there.distance, 6);
      }),
    );
  });

  it('is zero exactly where the chains meet', () => {
    const cross = [
      { x: -10, y: 0 },
      { x: 10, y: 0 },
    ];
    const upright = [
      { x: 3, y: -5 },
      { x: 3, y: 5 },
    ];
    expect(chainsMeet(cross, upright)).toBe(true);
    expect(clearanceBetween(cross, upright)).toEqual({ distance: 0, from: { x: 3, y: 0 }, to: { x: 3, y: 0 } });
    expect(
      chainsMeet(cross, [
        { x: 11, y: -5 },
        { x: 11, y: 5 },
      ]),
    ).toBe(false);
  });
});

describe('being inside a ring', () => {
  it('holds for every mean of a convex ring’s corners and for no point beyond its box', () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 4, maxLength: 12 }), (points) => {
        const hull = convexHull(points);
        const [first] = hull;
        fc.pre(first !== undefined && hull.length >= 3);
        const ring = [...hull, first];
        const area =
          hull.reduce((sum, a, index) => sum + a.x * ((ring[index + 1] ?? a).y - (hull.at(index - 1) ?? a).y), 0) / 2;
        fc.pre(Math.abs(area) > 1);
        const middle = {
          x: hull.reduce((sum, { x }) => sum + x, 0) / hull.length,
          y: hull.reduce((sum, { y }) => sum + y, 0) / hull.length,
        };
        expect(isInside(middle, ring)).toBe(true);
        expect(isInside({ x: 41, y: middle.y }, ring)).toBe(false);
      }),
    );
  });
});
