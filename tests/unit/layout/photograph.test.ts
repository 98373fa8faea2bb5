import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FrozenFlat } from '@/lib/domain/garment/flat';
import { sidesOf } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { applyMatrix, inverted, scaleTurnAndMove } from '@/lib/domain/geometry/matrix';
import { distance, type Point } from '@/lib/domain/geometry/point';
import { blankFromStyle, styleOfChart } from '@/lib/domain/layout/blank-from-style';
import type { GarmentBlank, GarmentSize } from '@/lib/domain/layout/document';
import { placePairs, setToScale, startingPoints } from '@/lib/domain/layout/photograph';
import { checkedWidth, startingCheck, widthToCheck } from '@/lib/domain/layout/photograph-check';
import { flatOf } from '@/lib/domain/layout/scene';
import { umFromInches } from '@/lib/domain/measure/length';

type Case = { readonly blank: GarmentBlank; readonly size: GarmentSize; readonly flat: FrozenFlat };

/** Every side of the middle size of every starter chart. */
const CASES: readonly Case[] = STARTER_CHARTS.flatMap((chart) => {
  const made = blankFromStyle(styleOfChart(chart, { name: chart.id, fabric: '' }), { blankId: chart.id });
  if (!made.ok) throw new Error(`${chart.id} cannot be drawn`);
  const { blank } = made;
  const size = blank.sizes[Math.floor(blank.sizes.length / 2)];
  if (!size) throw new Error(`${chart.id} has no sizes`);
  return sidesOf(blank.kind).map((side) => ({ blank, size, flat: flatOf(blank.kind, size, side) }));
});
const TEE = CASES.find(({ blank, flat }) => blank.blankId === 'crew-tee-adult' && flat.side === 'front');
if (!TEE) throw new Error('there is no adult crew tee');

const picture = fc.record({
  widthPx: fc.integer({ min: 700, max: 6_000 }),
  heightPx: fc.integer({ min: 700, max: 6_000 }),
});
const position = (most: number) => fc.double({ min: 0, max: most, noNaN: true });

describe('setting a photograph to scale', () => {
  it('sends both points to their places, keeps shapes and comes back', () => {
    const any = fc
      .tuple(fc.constantFrom(...CASES), picture)
      .chain(([each, size]) =>
        fc.tuple(
          fc.constant(each),
          fc.constant(size),
          fc.constantFrom(...placePairs(each.flat)),
          fc.array(fc.tuple(position(size.widthPx), position(size.heightPx)), { minLength: 3, maxLength: 3 }),
        ),
      );
    let set = 0;
    fc.assert(
      fc.property(any, ([{ flat }, size, places, drawn]) => {
        const [a, b, third] = drawn.map(([x, y]) => ({ x, y })) as [Point, Point, Point];
        const result = setToScale({ places: [...places], points: [a, b] }, size, flat);
        if (!result.ok) return;
        set += 1;
        const { matrix } = result;
        const [from, to] = [flat.points[places[0]], flat.points[places[1]]] as [Point, Point];
        expect(distance(applyMatrix(matrix, a), from)).toBeLessThan(1e-6);
        expect(distance(applyMatrix(matrix, b), to)).toBeLessThan(1e-6);
        expect(distance(applyMatrix(inverted(matrix), applyMatrix(matrix, third)), third)).toBeLessThan(1e-6);
        // One scale in every direction, and not mirrored: y stays a quarter turn clockwise of x.
        expect(matrix[3]).toBeCloseTo(matrix[0], 9);
        expect(matrix[2]).toBeCloseTo(-matrix[1], 9);
        expect(matrix[0] * matrix[3] - matrix[1] * matrix[2]).toBeGreaterThan(0);
      }),
      { numRuns: 2_000 },
    );
    expect(set).toBeGreaterThan(200);
  });

  it('finds the scale, turn and place that a photograph was made with', () => {
    const made = fc.record({
      each: fc.constantFrom(...CASES),
      pxPerMm: fc.double({ min: 1.2, max: 6, noNaN: true }),
      turn: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
      thirdX: fc.double({ min: -300, max: 300, noNaN: true }),
      thirdY: fc.double({ min: -100, max: 900, noNaN: true }),
    });
    let found = 0;
    fc.assert(
      fc.property(made, ({ each: { flat }, pxPerMm, turn, thirdX, thirdY }) => {
        const [places] = placePairs(flat);
        const middle = { x: flat.box.x + flat.box.width / 2, y: flat.box.y + flat.box.height / 2 };
        const reach = Math.ceil(pxPerMm * Math.hypot(flat.box.width, flat.box.height)) + 10;
        const toPicture = scaleTurnAndMove(pxPerMm, turn, middle, { x: reach / 2, y: reach / 2 });
        const points = places.map((name) => applyMatrix(toPicture, flat.points[name] as Point)) as [Point, Point];
        // A cap's panel is short beside its brim: such a photograph is refused, and the maker goes nearer.
        const result = setToScale({ places: [...places], points }, { widthPx: reach, heightPx: reach }, flat);
        if (!result.ok) return expect(result.reason).toBe('tooNear');
        found += 1;
        const third = { x: thirdX, y: thirdY };
        expect(distance(applyMatrix(result.matrix, applyMatrix(toPicture, third)), third)).toBeLessThan(1e-6);
        expect(result.pxPerMm).toBeCloseTo(pxPerMm, 6);
        expect(Math.cos(result.turnRad + turn)).toBeCloseTo(1, 6);
      }),
    );
    expect(found).toBeGreaterThan(50);
  });

  it('starts with the flat upright in the photograph, on every side of every kind, on a phone’s photograph', () => {
    for (const { blank, flat, size } of CASES)
      for (const [widthPx, heightPx] of [
        [1_800, 2_400],
        [2_400, 1_800],
      ] as const) {
        const [places] = placePairs(flat);
        const points = startingPoints(places, { widthPx, heightPx }, flat);
        const result = setToScale({ places: [...places], points }, { widthPx, heightPx }, flat);
        const name = `${blank.blankId} ${flat.side} ${widthPx}`;
        if (!result.ok) throw new Error(`${name}: ${result.reason}`);
        expect(Math.abs(result.turnRad), name).toBeLessThan(0.01);
        expect(widthToCheck(blank.kind, size, flat), name).not.toBeNull();
      }
  });

  it('refuses points that cannot be meant', () => {
    const { flat } = TEE;
    const size = { widthPx: 1_200, heightPx: 1_600 };
    const at = (a: Point, b: Point, each = size) =>
      setToScale({ places: ['collarSeamCentre', 'hemCentre'], points: [a, b] }, each, flat);
    expect(at({ x: 600, y: 300 }, { x: 600, y: 650 })).toEqual({ ok: false, reason: 'tooNear' });
    expect(at({ x: 600, y: 300 }, { x: 600, y: 300 })).toEqual({ ok: false, reason: 'tooNear' });
    expect(at({ x: 600, y: -3 }, { x: 600, y: 1_400 })).toEqual({ ok: false, reason: 'outsidePicture' });
    const small = { widthPx: 300, heightPx: 400 };
    expect(at({ x: 150, y: 60 }, { x: 150, y: 330 }, small)).toEqual({ ok: false, reason: 'tooCoarse' });
    expect(at({ x: 20, y: 1_590 }, { x: 1_190, y: 1_590 })).toEqual({ ok: false, reason: 'mostlyOutside' });
    const others = setToScale(
      {
        places: ['hemCentre', 'collarSeamCentre'],
        points: [
          { x: 600, y: 200 },
          { x: 600, y: 1_400 },
        ],
      },
      size,
      flat,
    );
    expect(others).toEqual({ ok: false, reason: 'otherPlaces' });
  });
});

describe('checking a width in a photograph', () => {
  const { blank, size, flat } = TEE;
  const photograph = { widthPx: 1_800, heightPx: 2_400 };
  const [places] = placePairs(flat);
  const set = setToScale({ places: [...places], points: startingPoints(places, photograph, flat) }, photograph, flat);
  const width = widthToCheck(blank.kind, size, flat);
  if (!(set.ok && width)) throw new Error('the tee cannot be checked');

  it('reads the chart’s own width where the photograph agrees with it, within a pixel at either end', () => {
    const { foundUm, chartUm, beyondCut } = checkedWidth(
      set.matrix,
      startingCheck(set.matrix, width),
      width,
      blank.cutToleranceUm.acrossUm,
    );
    expect(chartUm).toBe(size.measuresUm.chestWidth);
    expect(Math.abs(foundUm - chartUm)).toBeLessThanOrEqual((2 * 1_000) / set.pxPerMm);
    expect(beyondCut).toBe(false);
  });

  it('says by how much a photograph is wider, and when that is more than the cut varies', () => {
    const mm = fc.integer({ min: -100, max: 100 });
    fc.assert(
      fc.property(mm, mm, (left, right) => {
        const toPicture = inverted(set.matrix);
        const check: [Point, Point] = [
          applyMatrix(toPicture, { x: width.from.x - left, y: width.from.y }),
          applyMatrix(toPicture, { x: width.to.x + right, y: width.to.y }),
        ];
        const { differenceUm, beyondCut } = checkedWidth(set.matrix, check, width, blank.cutToleranceUm.acrossUm);
        expect(Math.abs(differenceUm - (left + right) * 1_000)).toBeLessThanOrEqual(1);
        if (Math.abs(left + right) !== 19) expect(beyondCut).toBe(Math.abs(left + right) * 1_000 > umFromInches(0.75));
      }),
    );
  });
});
