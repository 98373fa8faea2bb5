import { describe, expect, it } from 'vitest';
import { clothLook } from '@/lib/domain/garment/cloth-look';
import { type Flat, type FlatLineName, type FlatPointName, freezeFlat, type Side } from '@/lib/domain/garment/flat';
import { completeMeasures, drawFlat, type GarmentKind, sidesOf, widthMeasureOf } from '@/lib/domain/garment/kinds';
import type { EnteredMeasures } from '@/lib/domain/garment/measures';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { pathData } from '@/lib/domain/geometry/path';
import { type Chain, chainsOf, isSimple, isWithin, outlineRing } from './rings';

const sizes = STARTER_CHARTS.flatMap(({ id, kind, sizes: of }) =>
  of.map((size) => ({ name: `${id} ${size.label}`, kind, entered: size.entered })),
);

function drawn(kind: GarmentKind, entered: EnteredMeasures, side: Side): Flat {
  const completed = completeMeasures(kind, entered);
  if (!completed.ok) throw new Error(`${completed.refusal.reason}: ${completed.refusal.measure}`);
  return drawFlat(kind, completed.measures, side);
}

/** The lines that a named place may lie on. A hood or a turned-down collar covers the collar seam. */
const LIES_ON: Readonly<Record<FlatPointName, readonly FlatLineName[]>> = {
  collarSeamCentre: ['collarSeam', 'coveredSeam'],
  highPointShoulder: ['collarSeam', 'coveredSeam'],
  shoulderPoint: ['armhole', 'collarSeam'],
  underarm: ['armhole'],
  hemCentre: ['hem'],
  sleeveHemFold: ['sleeveHem'],
  topEdgeCentre: ['topEdge'],
  bibTopCentre: ['bibEdge'],
  brimSeamCentre: ['brimSeam'],
  outseamTop: ['outseam'],
};

/** Outlines and points are kept to a micrometre, curves are looked at in steps: mm. */
const NEAR_MM = 0.1;

/** How far a point lies from a chain of straight pieces, mm. */
function distanceTo(chain: Chain, at: { x: number; y: number }): number {
  const offs = chain.slice(1).map((to, index) => {
    const from = chain[index] ?? to;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const share = Math.min(1, Math.max(0, ((at.x - from.x) * dx + (at.y - from.y) * dy) / (dx * dx + dy * dy || 1)));
    return Math.hypot(from.x + share * dx - at.x, from.y + share * dy - at.y);
  });
  return Math.min(...offs);
}

describe.each(sizes)('the flats of $name', ({ kind, entered }) => {
  const sides = sidesOf(kind).map((side) => drawn(kind, entered, side));

  it('are closed, simple outlines within the box they give', () => {
    for (const flat of sides) {
      const frozen = freezeFlat(flat);
      expect(frozen.outline.endsWith('Z'), flat.side).toBe(true);
      expect(frozen.outline.match(/M/g), flat.side).toHaveLength(1);
      expect(isSimple(outlineRing(frozen)), flat.side).toBe(true);
      expect(JSON.stringify(frozen), flat.side).not.toMatch(/NaN|Infinity|null/);
      const { x, y, width, height } = frozen.box;
      const beyond = frozen.lines.filter(({ d }) =>
        chainsOf(d)
          .flat()
          .some(
            (at) =>
              at.x < x - NEAR_MM || at.x > x + width + NEAR_MM || at.y < y - NEAR_MM || at.y > y + height + NEAR_MM,
          ),
      );
      expect(
        beyond.map(({ line }) => line),
        flat.side,
      ).toEqual([]);
    }
  });

  it('have every named place on the line it belongs to', () => {
    for (const { side, points, lines } of sides) {
      for (const [name, at] of Object.entries(points) as [FlatPointName, { x: number; y: number }][]) {
        const on = lines.filter(({ line }) => LIES_ON[name].includes(line));
        const offs = on.flatMap(({ path }) => chainsOf(pathData(path)).map((chain) => distanceTo(chain, at)));
        expect(Math.min(...offs), `${name} of the ${side}`).toBeLessThanOrEqual(NEAR_MM);
      }
    }
  });
});

describe('left and right', () => {
  it.each(sizes.filter(({ kind }) => kind !== 'joggerLeg'))('mirror each other: $name', ({ kind, entered }) => {
    for (const side of sidesOf(kind)) {
      const ring = outlineRing(freezeFlat(drawn(kind, entered, side)));
      const sampled = ring.filter((_, index) => index % 6 === 0);
      const lopsided = sampled.filter(({ x, y }) => distanceTo(ring, { x: -x, y }) > NEAR_MM);
      expect(lopsided, side).toEqual([]);
    }
    if (!sidesOf(kind).includes('leftSleeve')) return;
    const [left, right] = (['leftSleeve', 'rightSleeve'] as const).map((side) => drawn(kind, entered, side));
    expect(right && { ...right, side: null }).toEqual(left && { ...left, side: null });
  });
});

describe('the sizes of a starter chart', () => {
  it.each(STARTER_CHARTS)('are never narrower than the size before: $id', ({ kind, sizes: of }) => {
    for (const side of sidesOf(kind)) {
      const boxes = of.map(({ entered }) => drawn(kind, entered, side).box);
      for (const [index, box] of boxes.slice(1).entries()) {
        expect(box.width, `${of[index + 1]?.label} ${side}`).toBeGreaterThanOrEqual(boxes[index]?.width ?? 0);
      }
    }
    const widths = of.map(({ entered }) => entered[widthMeasureOf(kind)] ?? 0);
    expect([...widths].sort((a, b) => a - b)).toEqual(widths);
  });
});

describe('heather cloth', () => {
  /** What fibres may add to a scene, characters: it is sent to a phone. */
  const MOST = 15_000;

  it.each(STARTER_CHARTS)(
    'shows fibres on the cloth of the largest size and nowhere else, in few bytes: $id',
    ({ kind, sizes: of }) => {
      for (const entered of of.slice(-1).map((size) => size.entered)) {
        for (const side of sidesOf(kind)) {
          const flat = freezeFlat(drawn(kind, entered, side));
          const { fibres } = clothLook({ hex: '#9A9CA0', heather: true }, flat);
          expect(fibres.map(({ d }) => d).join('').length, side).toBeLessThan(MOST);
          const pieces = flat.parts.flatMap(({ d }) => chainsOf(d));
          const off = fibres
            .flatMap(({ d }) => chainsOf(d).flat())
            .filter((end) => !pieces.some((piece) => isWithin(end, piece)));
          expect(off, side).toEqual([]);
        }
      }
    },
  );

  it('is the same each time, shows on white and on black, and not where a cloth is plain', () => {
    const flat = () => freezeFlat(drawn('crewTee', sizes[0]?.entered ?? {}, 'front'));
    const fibresOn = (hex: string, heather = true) => clothLook({ hex, heather }, flat()).fibres;
    expect(fibresOn('#9A9CA0')).toEqual(fibresOn('#9A9CA0'));
    for (const hex of ['#FFFFFF', '#000000']) expect(fibresOn(hex).length, hex).toBeGreaterThan(0);
    expect(fibresOn('#9A9CA0', false)).toEqual([]);
  });
});
