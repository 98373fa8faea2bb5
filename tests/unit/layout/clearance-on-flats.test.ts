import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freezeFlat, PRESSABLE_LINES } from '@/lib/domain/garment/flat';
import { completeMeasures, drawFlat, sidesOf } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { clearanceBetween } from '@/lib/domain/geometry/clearance';
import { convexHull } from '@/lib/domain/geometry/hull';
import { chainsOf } from '@/lib/domain/layout/flat-chains';
import { locationsFitting } from '@/lib/domain/layout/locations';
import { placeArt } from '@/lib/domain/layout/placement';
import { sampledDistance, sampledPath, sampledRing } from './sampled-distance';

/** One side of one size of a starter chart that prints can go on, not drawn yet. */
const sides = STARTER_CHARTS.flatMap((chart) =>
  chart.sizes.flatMap((size) =>
    sidesOf(chart.kind).flatMap((side) => {
      const [location] = locationsFitting(side, [chart]);
      return location ? [{ chart, size, side, locationId: location.id }] : [];
    }),
  ),
);

/** The turned outline of some ink: any hull, scaled, turned and put anywhere on or off the garment. */
const placing = fc.record({
  ink: fc.array(fc.record({ x: fc.integer({ max: 1000, min: 0 }), y: fc.integer({ max: 1000, min: 0 }) }), {
    minLength: 3,
    maxLength: 14,
  }),
  widthUm: fc.integer({ min: 15_000, max: 420_000 }),
  turnCentideg: fc.integer({ min: -18_000, max: 18_000 }),
  dropUm: fc.integer({ min: -150_000, max: 600_000 }),
  acrossUm: fc.integer({ min: -300_000, max: 300_000 }),
});

describe('the clearance of ink to the lines of a flat', () => {
  it('agrees with sampling both curves every 0.1 mm, where they cross and where they lie apart', () => {
    let [crossing, apart] = [0, 0];
    fc.assert(
      fc.property(fc.constantFrom(...sides), fc.nat(), placing, ({ chart, size, side, locationId }, pick, given) => {
        const hull = convexHull(given.ink);
        const xs = hull.map(({ x }) => x);
        const [left, width] = [Math.min(...xs), Math.max(...xs) - Math.min(...xs)];
        fc.pre(hull.length >= 3 && width >= 50);
        const ys = hull.map(({ y }) => y);
        const [top, height] = [Math.min(...ys), Math.max(...ys) - Math.min(...ys)];
        fc.pre(height >= 1);
        const art = {
          inkBox: { x: left, y: top, width, height },
          inkHull: hull.map(({ x, y }): [number, number] => [x, y]),
        };
        const completed = completeMeasures(chart.kind, size.entered);
        if (!completed.ok) throw new Error(`${chart.id} ${size.label}: ${completed.refusal.reason}`);
        const drawn = drawFlat(chart.kind, completed.measures, side);
        const lines = drawn.lines.filter(({ line }) => !PRESSABLE_LINES.has(line));
        const { line, path } = lines[pick % lines.length] ?? lines[0] ?? { line: 'hem', path: [] };
        const flat = freezeFlat({ ...drawn, lines: [{ line, path }] });
        const { inkOutline } = placeArt(art, given.turnCentideg, given, locationId, flat);
        const ring = [...inkOutline, ...inkOutline.slice(0, 1)];
        const exact = Math.min(...chainsOf(flat).lines.map(({ chain }) => clearanceBetween(ring, chain).distance));
        const sampled = sampledDistance(sampledRing(inkOutline), sampledPath(path));
        expect(Math.abs(exact - sampled), `${chart.id} ${size.label} ${side} ${line}`).toBeLessThanOrEqual(0.2);
        if (exact === 0) crossing += 1;
        else apart += 1;
      }),
      { numRuns: 500 },
    );
    expect(crossing).toBeGreaterThan(25);
    expect(apart).toBeGreaterThan(100);
  }, 60_000);
});
