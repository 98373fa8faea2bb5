import { describe, expect, it } from 'vitest';
import type { ArtRef } from '@/lib/domain/art/art-ref';
import { PRESSABLE_LINES } from '@/lib/domain/garment/flat';
import { sidesOf } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { blankFromChart } from '@/lib/domain/layout/garment-edits';
import { locationsFitting, startingValues } from '@/lib/domain/layout/locations';
import { placeArt } from '@/lib/domain/layout/placement';
import { flatOf } from '@/lib/domain/layout/scene';
import { startingGroups } from '@/lib/domain/layout/starting-groups';
import { UM_PER_MM } from '@/lib/domain/measure/length';
import { chainsCross, chainsOf, isWithin, outlineRing } from '../garment/rings';

/** A picture whose ink fills a box of these proportions, the largest convex outline it can have. */
function boxOfInk(widthUm: number, heightUm: number): Pick<ArtRef, 'inkBox' | 'inkHull'> {
  const [width, height] = [widthUm / UM_PER_MM, heightUm / UM_PER_MM];
  return {
    inkBox: { x: 0, y: 0, width, height },
    inkHull: [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ],
  };
}

const places = STARTER_CHARTS.flatMap((chart) => {
  const blank = blankFromChart(chart, chart.id, chart.id, '');
  return sidesOf(chart.kind).flatMap((side) =>
    locationsFitting(side, [blank]).map(({ id }) => ({ name: `${chart.id}, ${id}`, blank, side, locationId: id })),
  );
});

describe('every starting value on every size of every starter chart', () => {
  it.each(places)('lies on the cloth and across no seam: $name', ({ blank, side, locationId }) => {
    const values = startingValues(locationId, blank);
    if (!values) throw new Error(`${locationId} has no values`);
    for (const heightUm of [values.tallestUm, values.widthUm / 5]) {
      const art = boxOfInk(values.widthUm, heightUm);
      const groups = startingGroups(locationId, [{ blanks: [blank] }], art, () => 'group');
      for (const size of blank.sizes) {
        const group = groups?.find(({ members }) => members.some(({ sizeId }) => sizeId === size.sizeId));
        if (!group) throw new Error(`${size.label} is in no group`);
        const flat = flatOf(blank.kind, size, side);
        const { inkOutline } = placeArt(art, 0, group, locationId, flat);
        const ink = [...inkOutline, ...inkOutline.slice(0, 1)];
        const outline = outlineRing(flat);
        expect(
          ink.every((point) => isWithin(point, outline)),
          `${size.label} is on the cloth`,
        ).toBe(true);
        expect(chainsCross(ink, outline), `${size.label} stays within the edge`).toBe(false);
        const crossed = flat.lines
          .filter(({ line }) => !PRESSABLE_LINES.has(line))
          .filter(({ d }) =>
            chainsOf(d).some((chain) => chainsCross(ink, chain) || chain.some((at) => isWithin(at, ink))),
          );
        expect(
          crossed.map(({ line }) => line),
          size.label,
        ).toEqual([]);
      }
    }
  });

  it('covers every kind of garment', () => {
    expect(new Set(places.map(({ blank }) => blank.kind)).size).toBe(
      new Set(STARTER_CHARTS.map(({ kind }) => kind)).size,
    );
  });
});
