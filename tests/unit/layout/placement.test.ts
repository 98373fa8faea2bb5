import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyMatrix } from '@/lib/domain/geometry/matrix';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { inkHeightUm, placeArt, readingsFromBox, widthForHeightUm } from '@/lib/domain/layout/placement';
import { flatOf } from '@/lib/domain/layout/scene';
import { frozenLine } from '../garment/drawn-measures';
import { LEAF, TEE_LOCATIONS, teeWithPrints } from './sample-layout';

const layout = teeWithPrints([]);
const sizes = layout.garments.flatMap(({ blanks }) =>
  blanks.flatMap(({ sizes: of, kind }) => of.map((size) => ({ kind, size }))),
);

const placements = fc.record({
  size: fc.constantFrom(...sizes),
  locationId: fc.constantFrom(...TEE_LOCATIONS),
  turnCentideg: fc.integer({ min: -36_000, max: 36_000 }),
  readings: fc.record({
    widthUm: fc.integer({ min: 5_000, max: 450_000 }),
    dropUm: fc.integer({ min: -100_000, max: 500_000 }),
    acrossUm: fc.integer({ min: -250_000, max: 250_000 }),
  }),
});

type Placement = typeof placements extends fc.Arbitrary<infer Value> ? Value : never;

function set({ size: { kind, size }, locationId, turnCentideg, readings }: Placement) {
  const flat = flatOf(kind, size, LOCATIONS[locationId].side);
  return { flat, placed: placeArt(LEAF, turnCentideg, readings, locationId, flat) };
}

/** The corners of the ink's hull on the flat, by the matrix alone. */
function inkCorners(matrix: Parameters<typeof applyMatrix>[0]) {
  return LEAF.inkHull.map(([x, y]) => applyMatrix(matrix, { x, y }));
}

describe('setting a picture down', () => {
  it('makes the unturned ink as wide as the reading', () => {
    fc.assert(
      fc.property(placements, (placement) => {
        const { matrix } = set(placement).placed;
        const left = applyMatrix(matrix, { x: LEAF.inkBox.x, y: 0 });
        const right = applyMatrix(matrix, { x: LEAF.inkBox.x + LEAF.inkBox.width, y: 0 });
        expect(Math.hypot(right.x - left.x, right.y - left.y)).toBeCloseTo(placement.readings.widthUm / 1000, 6);
      }),
    );
  });

  it('puts the turned ink at the drop from the drawn collar seam and across from the centre line', () => {
    fc.assert(
      fc.property(placements, (placement) => {
        fc.pre(LOCATIONS[placement.locationId].measuredFrom === 'collarSeamCentre');
        const { flat, placed } = set(placement);
        // The seam's lowest place is the middle of its drawn line, found by an independent path library.
        const seam = frozenLine(flat, 'collarSeam');
        const seamY = seam.getPointAtLength(seam.getTotalLength() / 2).y;
        const corners = inkCorners(placed.matrix);
        const xs = corners.map(({ x }) => x);
        const top = Math.min(...corners.map(({ y }) => y));
        const towardsViewersRight = (flat.side === 'back' ? -1 : 1) * (placement.readings.acrossUm / 1000);
        expect(top - seamY).toBeCloseTo(placement.readings.dropUm / 1000, 2);
        expect((Math.min(...xs) + Math.max(...xs)) / 2).toBeCloseTo(towardsViewersRight, 6);
      }),
      { numRuns: 30 },
    );
  });

  it('keeps a print at the wearer’s left on the viewer’s right of the front', () => {
    const { placed } = set({
      size: sizes[6] ?? fail(),
      locationId: 'leftChest',
      turnCentideg: 0,
      readings: { widthUm: 90_000, dropUm: 200_000, acrossUm: 100_000 },
    });
    expect(placed.inkBox.x).toBeGreaterThan(0);
  });

  it('reads back drop and across as they were set', () => {
    fc.assert(
      fc.property(placements, (placement) => {
        const { flat, placed } = set(placement);
        const { dropUm, acrossUm } = placement.readings;
        expect(readingsFromBox(placed.inkBox, placement.locationId, flat)).toEqual({ dropUm, acrossUm });
      }),
    );
  });

  it('turns about the ink: a whole turn changes nothing', () => {
    fc.assert(
      fc.property(placements, (placement) => {
        const once = set(placement).placed.matrix;
        const again = set({ ...placement, turnCentideg: placement.turnCentideg + 36_000 }).placed.matrix;
        for (const [index, value] of once.entries()) expect(again[index]).toBeCloseTo(value, 6);
      }),
    );
  });

  it('keeps the ink’s proportions between width and height within a micrometre of each', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5_000, max: 450_000 }), (widthUm) => {
        expect(Math.abs(widthForHeightUm(LEAF, inkHeightUm(LEAF, widthUm)) - widthUm)).toBeLessThanOrEqual(1);
        expect(Math.abs(inkHeightUm(LEAF, widthUm) / widthUm - 500 / 600)).toBeLessThan(1 / widthUm);
      }),
    );
  });
});

function fail(): never {
  throw new Error('the chart is shorter than it was');
}
