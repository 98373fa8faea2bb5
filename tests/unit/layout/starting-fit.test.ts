import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ArtRef } from '@/lib/domain/art/art-ref';
import { AGE_BANDS, completeMeasures, GARMENT_KINDS, requiredMeasures, sidesOf } from '@/lib/domain/garment/kinds';
import type { EnteredMeasures } from '@/lib/domain/garment/measures';
import { STARTER_CHARTS, starterChart, USUAL_CUT_TOLERANCE } from '@/lib/domain/garment/starter-charts';
import type { GarmentBlank } from '@/lib/domain/layout/document';
import { fitOnSize } from '@/lib/domain/layout/fit';
import { blankFromChart } from '@/lib/domain/layout/garment-edits';
import { type LocationId, locationsFitting } from '@/lib/domain/layout/locations';
import { placeArt } from '@/lib/domain/layout/placement';
import { flatOf } from '@/lib/domain/layout/scene';
import { startingGroups } from '@/lib/domain/layout/starting-groups';

/** A picture whose ink fills a box of this many times its width in height: the largest outline such a picture can have. */
function boxOfInk(tall: number): Pick<ArtRef, 'inkBox' | 'inkHull'> {
  const [width, height] = [1000, 1000 * tall];
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

/** Every finding of a picture as it starts at a location, over all sizes of a blank. */
function startingFindings(blank: GarmentBlank, locationId: LocationId, tall: number): string[] {
  const art = boxOfInk(tall);
  const groups = startingGroups(locationId, [{ blanks: [blank] }], art, () => 'group');
  return blank.sizes.flatMap((size) => {
    const group = groups?.find(({ members }) => members.some(({ sizeId }) => sizeId === size.sizeId));
    if (!group) throw new Error(`${size.label} is in no group`);
    const [side] = sidesOf(blank.kind).filter((each) =>
      locationsFitting(each, [blank]).some(({ id }) => id === locationId),
    );
    if (!side) throw new Error(`${blank.kind} has no ${locationId}`);
    const flat = flatOf(blank.kind, size, side);
    const placed = placeArt(art, 0, group, locationId, flat);
    return fitOnSize(placed, flat, { locationId, cutToleranceUm: blank.cutToleranceUm }).map(
      ({ kind, line, um }) => `${size.label}: ${kind} ${line} ${um}`,
    );
  });
}

function locationsOf(blank: GarmentBlank): LocationId[] {
  return sidesOf(blank.kind).flatMap((side) => locationsFitting(side, [blank]).map(({ id }) => id));
}

/** Flat pictures as wide as a name, tall ones as a totem, and everything between. */
const TALL = [1 / 8, 1 / 3, 2 / 3, 1, 3 / 2, 3, 8];

const charts = STARTER_CHARTS.map((chart) => blankFromChart(chart, chart.id, chart.id, ''));

/** Charts to borrow from for a kind that ships none for an age band: whole families of sizes, common practice, no source. */
const LIKE = {
  adult: 'crew-tee-adult',
  youth: 'crew-tee-youth',
  toddler: 'crew-tee-toddler',
  infant: 'infant-bodysuit-infant',
};

/** A kind cut for an age band whose chart does not ship, from what a tee of that band measures; long sleeves as long as the chest is wide. */
function borrowed(): GarmentBlank[] {
  return GARMENT_KINDS.flatMap((kind) =>
    AGE_BANDS.flatMap((ageBand) => {
      if (charts.some((blank) => blank.kind === kind && blank.ageBand === ageBand)) return [];
      const sizes = (starterChart(LIKE[ageBand])?.sizes ?? []).flatMap(({ id, label, entered }) => {
        const completed = completeFrom(kind, entered);
        return completed ? [{ sizeId: id, label, measuresUm: completed, estimated: [] }] : [];
      });
      const blank = { blankId: kind, name: `${kind}, ${ageBand}`, kind, ageBand, fabric: '', sizes };
      return sizes.length > 0 ? [{ ...blank, cutToleranceUm: { ...USUAL_CUT_TOLERANCE } }] : [];
    }),
  );
}

function completeFrom(kind: GarmentBlank['kind'], entered: EnteredMeasures) {
  const given = Object.fromEntries(requiredMeasures(kind).map((measure) => [measure, entered[measure]]));
  for (const tried of [given, { ...given, sleeveLength: entered.chestWidth }]) {
    const completed = completeMeasures(kind, tried);
    if (completed.ok) return { ...completed.measures.um };
  }
  return null;
}

function placesOn(blanks: readonly GarmentBlank[]) {
  return blanks.flatMap((blank) =>
    locationsOf(blank).map((locationId) => ({ name: `${blank.name}, ${locationId}`, blank, locationId })),
  );
}

describe('every starting value', () => {
  it.each(placesOn(charts))('gives no finding on its starter chart: $name', ({ blank, locationId }) => {
    expect(TALL.flatMap((tall) => startingFindings(blank, locationId, tall))).toEqual([]);
  });

  it.each(placesOn(borrowed()))('gives no finding where no chart ships: $name', ({ blank, locationId }) => {
    expect(TALL.flatMap((tall) => startingFindings(blank, locationId, tall))).toEqual([]);
  });

  it('gives no finding for a picture of any proportions', () => {
    const places = placesOn(charts);
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.double({ min: 0.05, max: 20, noNaN: true }), (place, tall) => {
        expect(startingFindings(place.blank, place.locationId, tall), place.name).toEqual([]);
      }),
    );
  });
});
