import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { widthMeasureOf } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS, starterChart } from '@/lib/domain/garment/starter-charts';
import { emptyLayout, type LayoutDocument, type Print, type SizeKey } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { addGarment, blankFromChart, startingPrint } from '@/lib/domain/layout/garment-edits';
import { printFit } from '@/lib/domain/layout/layout-fit';
import { type LocationId, locationsFitting } from '@/lib/domain/layout/locations';
import { SHARE_WITHIN } from '@/lib/domain/layout/size-group-bands';
import {
  isGroupedSo,
  suggestedSizeGroups,
  widthsOn,
  withGroups,
  withOneWidth,
} from '@/lib/domain/layout/size-group-suggestion';
import { groupFor, keyOf, offeredSizes, sizeOf, sizesToShow } from '@/lib/domain/layout/sizes';
import { type LengthUnit, umFromInches } from '@/lib/domain/measure/length';
import { LEAF } from './sample-layout';

let next = 0;
const newId = () => {
  next += 1;
  return `id-${next}`;
};

/** A garment of these starter charts with a print at a location; only some sizes ordered where counts are given. */
function printed(chartIds: readonly string[], locationId: LocationId, ordered: readonly SizeKey[] = []) {
  const blanks = chartIds.map((id) => {
    const chart = starterChart(id);
    if (!chart) throw new Error(`no chart ${id}`);
    return blankFromChart(chart, id, id, '');
  });
  const layout = addGarment(emptyLayout('Placed by hand.'), {
    garmentId: 'garment',
    name: 'Garment',
    cloth: { name: 'Navy', hex: '#20344F', heather: false },
    blanks,
    counts: ordered.map((key) => ({ ...key, quantity: 2 })),
  });
  const options = { printId: 'print', name: 'Leaf', garmentIds: ['garment'], locationId, newId };
  const print = startingPrint(layout, LEAF, options);
  if (!print) throw new Error(`${locationId} does not suit ${chartIds.join(' and ')}`);
  return { layout, print };
}

function setOn(print: Print, key: SizeKey, change: Partial<Print['sizeGroups'][number]>): Print {
  const group = groupFor(print, key);
  return { ...print, sizeGroups: print.sizeGroups.map((each) => (each === group ? { ...each, ...change } : each)) };
}

function suggested(
  { layout, print }: { layout: LayoutDocument; print: Print },
  anchor: SizeKey,
  unit: LengthUnit = 'in',
) {
  const suggestion = suggestedSizeGroups(print, layout, { unit, anchor });
  if (!suggestion) throw new Error('nothing suggested');
  return { suggestion, print: withGroups(print, suggestion, anchor, newId) };
}

const ADULT_M: SizeKey = { blankId: 'crew-tee-adult', sizeId: 'M' };
const TEES = ['crew-tee-youth', 'crew-tee-adult'];

describe('suggested size groups', () => {
  it('are three widths for youths and adults, each band of sizes following the last in width', () => {
    const { suggestion } = suggested(printed(TEES, 'fullFront'), ADULT_M);
    expect(suggestion.widthsUm.length).toBe(3);
    expect(suggestion.groups.map(({ members }) => members.map(({ sizeId }) => sizeId).join(' '))).toEqual([
      'XS S M L XL',
      'S M L',
      'XL 2XL 3XL 4XL 5XL',
    ]);
  });

  it('are more from infants to 5XL, and fewer for two or three sizes', () => {
    const family = ['infant-bodysuit-infant', 'crew-tee-toddler', ...TEES];
    expect(suggested(printed(family, 'fullFront'), ADULT_M).suggestion.widthsUm.length).toBeGreaterThan(3);
    const few = ['M', 'L', 'XL'].map((sizeId) => ({ blankId: 'crew-tee-adult', sizeId }));
    expect(suggested(printed(TEES, 'fullFront', few), ADULT_M).suggestion.widthsUm.length).toBe(2);
    expect(suggested(printed(TEES, 'fullFront', few.slice(0, 2)), ADULT_M).suggestion.widthsUm.length).toBe(1);
  });

  it('leave what is set on the size in hand as it is there', () => {
    const start = printed(TEES, 'fullFront');
    const mine = { widthUm: umFromInches(9.6), dropUm: umFromInches(3.5), acrossUm: umFromInches(1) };
    const print = setOn(start.print, ADULT_M, mine);
    const after = suggested({ ...start, print }, ADULT_M).print;
    expect(groupFor(after, ADULT_M)).toMatchObject({ ...mine, groupId: groupFor(print, ADULT_M).groupId });
  });

  it('go as much lower on a youth as prints are smaller there, in eighths', () => {
    const start = printed(TEES, 'fullFront');
    const print = setOn(start.print, ADULT_M, { dropUm: umFromInches(4) });
    const youth = groupFor(suggested({ ...start, print }, ADULT_M).print, { blankId: 'crew-tee-youth', sizeId: 'M' });
    // 2 1/2 in usually; 1 in lower than usual on the adult, whose usual width is a third more.
    expect(youth.dropUm).toBe(umFromInches(3.25));
  });

  it('put a left chest further out on the widest sizes, as its location does', () => {
    const { print } = suggested(printed(TEES, 'leftChest'), ADULT_M);
    const across = (sizeId: string) => groupFor(print, { blankId: 'crew-tee-adult', sizeId }).acrossUm;
    expect([across('XL'), across('2XL'), across('5XL')]).toEqual([4, 5, 5].map(umFromInches));
    expect(groupFor(print, { blankId: 'crew-tee-youth', sizeId: 'M' }).acrossUm).toBe(umFromInches(3));
  });

  it('keep under the pocket’s gap where the share of the chest would not', () => {
    const start = printed(['pullover-hood-youth', 'pullover-hood-adult'], 'abovePocket');
    const anchor = { blankId: 'pullover-hood-adult', sizeId: 'L' };
    const print = setOn(start.print, anchor, { widthUm: umFromInches(11.5) });
    const after = suggested({ ...start, print }, anchor).print;
    expect(printFit(start.layout, after).flatMap(({ findings }) => findings)).toEqual([]);
  });

  it('give a size nobody ordered no width that is too wide for it where another fits', () => {
    const anchor = { blankId: 'raglan-adult', sizeId: '2XL' };
    const start = printed(['raglan-adult'], 'fullBack', [{ blankId: 'raglan-adult', sizeId: 'S' }, anchor]);
    const print = setOn(start.print, anchor, { widthUm: Math.round(groupFor(start.print, anchor).widthUm * 1.6) });
    const { suggestion, print: after } = suggested({ ...start, print }, anchor);
    const [narrow, wide] = suggestion.widthsUm;
    const xl = { blankId: 'raglan-adult', sizeId: 'XL' };
    const near = { ...groupFor(after, xl), widthUm: wide ?? fail() };
    expect(fitsOn(start.layout, after, xl, near)).toBe(false);
    expect(groupFor(after, xl).widthUm).toBe(narrow);
  });

  it('start from the widest that fits where the size in hand has a finding', () => {
    const start = printed(TEES, 'fullFront');
    const print = setOn(start.print, ADULT_M, { widthUm: umFromInches(19) });
    const after = suggested({ ...start, print }, ADULT_M).print;
    expect(groupFor(after, ADULT_M).widthUm).toBeLessThan(umFromInches(17));
    expect(printFit(start.layout, after).flatMap(({ findings }) => findings)).toEqual([]);
  });

  it('are not suggested again once taken', () => {
    const start = printed(TEES, 'leftChest');
    const first = suggested(start, ADULT_M);
    expect(isGroupedSo(start.print, first.suggestion)).toBe(false);
    const again = suggested({ ...start, print: first.print }, ADULT_M).suggestion;
    expect(isGroupedSo(first.print, again)).toBe(true);
    expect(again).toEqual(first.suggestion);
  });
});

describe('one width for all sizes', () => {
  it('is one transfer, with each band’s own drop', () => {
    const { layout, print } = printed(TEES, 'fullFront');
    const three = suggested({ layout, print }, ADULT_M).print;
    const one = withOneWidth(three, umFromInches(9));
    expect(widthsOn(one, offeredSizes(layout.garments[0] ?? fail()).map(keyOf))).toEqual([umFromInches(9)]);
    expect(one.sizeGroups.map(({ dropUm }) => dropUm)).toEqual([umFromInches(2.5), umFromInches(3)]);
    expect(layoutFault({ ...layout, prints: [one] })).toBeNull();
  });
});

function fail(): never {
  throw new Error('no garment');
}

/** One or two starter charts under one garment, at any location that suits both. */
const scenes = STARTER_CHARTS.flatMap((chart) =>
  [null, ...STARTER_CHARTS.filter(({ kind, ageBand }) => kind === chart.kind && ageBand !== chart.ageBand)].flatMap(
    (other) => {
      const charts = other ? [other, chart] : [chart];
      const sides = ['front', 'back', 'leftSleeve'] as const;
      const locations = sides.flatMap((side) => locationsFitting(side, charts));
      return locations.map(({ id }) => ({ chartIds: charts.map((each) => each.id), locationId: id }));
    },
  ),
);

const chosen = fc.record({
  scene: fc.constantFrom(...scenes),
  pick: fc.nat(),
  ordered: fc.array(fc.nat(), { maxLength: 9 }),
  width: fc.double({ min: 0.4, max: 1.5, noNaN: true }),
  drop: fc.integer({ min: -8, max: 12 }),
  turnCentideg: fc.constantFrom(0, 0, 1_500, -9_000),
  unit: fc.constantFrom('in' as const, 'cm' as const),
});

type Chosen = typeof chosen extends fc.Arbitrary<infer Value> ? Value : never;

/** A print as a maker may have set it on one size, and what is suggested for the others. */
function suggestedFor({ scene, pick, ordered, width, drop, turnCentideg, unit }: Chosen) {
  const all = offeredSizes(printed(scene.chartIds, scene.locationId).layout.garments[0] ?? fail()).map(keyOf);
  const at = (index: number) => all[index % all.length] ?? fail();
  const keys = [...new Set(ordered.map((index) => index % all.length))].map(at);
  const { layout, print: start } = printed(scene.chartIds, scene.locationId, keys);
  const anchor = at(pick);
  const was = groupFor(start, anchor);
  const set = { widthUm: Math.round(was.widthUm * width), dropUm: was.dropUm + drop * umFromInches(1 / 8) };
  const print = { ...setOn(start, anchor, set), turnCentideg };
  const stepUm = unit === 'in' ? umFromInches(1 / 4) : 5_000;
  return { layout, print, anchor, stepUm, ...after(suggested({ layout, print }, anchor, unit)) };
}

function after({ suggestion, print }: ReturnType<typeof suggested>) {
  return { suggestion, grouped: print };
}

type Made = ReturnType<typeof suggestedFor>;

/** What is set on the size in hand stays; only where that does not fit is it made narrower, to a whole step. */
function expectAnchored({ layout, print, anchor, grouped, stepUm }: Made): void {
  const [was, is] = [groupFor(print, anchor), groupFor(grouped, anchor)];
  expect([is.dropUm, is.acrossUm]).toEqual([was.dropUm, was.acrossUm]);
  if (is.widthUm === was.widthUm) return;
  expect(fitsOn(layout, print, anchor, was)).toBe(false);
  expect(is.widthUm % stepUm).toBe(0);
  expect(is.widthUm).toBeLessThan(was.widthUm);
}

/** Each size has no finding where some width down to a quarter of its share has none, and is near the widest such. */
function expectShareKept({ layout, anchor, grouped, stepUm }: Made, key: SizeKey): void {
  const garment = layout.garments[0] ?? fail();
  const girth = (each: SizeKey) => {
    const { blank, size } = sizeOf(garment, each);
    return size.measuresUm[widthMeasureOf(blank.kind)] ?? fail();
  };
  const group = groupFor(grouped, key);
  const idealUm = (groupFor(grouped, anchor).widthUm * girth(key)) / girth(anchor);
  const own = widthsDownFrom(idealUm, stepUm).find((widthUm) => fitsOn(layout, grouped, key, { ...group, widthUm }));
  if (own === undefined) return;
  expect(fitsOn(layout, grouped, key, group), key.sizeId).toBe(true);
  if (key.blankId === anchor.blankId && key.sizeId === anchor.sizeId) return;
  expect(Math.abs(group.widthUm / own - 1), key.sizeId).toBeLessThanOrEqual(SHARE_WITHIN + 1e-9);
}

/** A size nobody ordered gets a width that fits where any of the suggested ones does. */
function expectFittingJoined({ layout, grouped, suggestion, stepUm }: Made, key: SizeKey): void {
  const group = groupFor(grouped, key);
  const fitting = suggestion.widthsUm.filter((widthUm) => fitsOn(layout, grouped, key, { ...group, widthUm }));
  const own = widthsDownFrom(group.widthUm, stepUm).find((widthUm) => fitting.includes(widthUm));
  if (own === undefined) return;
  expect(fitsOn(layout, grouped, key, group), key.sizeId).toBe(true);
}

describe('suggested size groups of any print', () => {
  it('hold every size once, avoid every finding a width can avoid, keep the share, and say their cost', () => {
    fc.assert(
      fc.property(chosen, (each) => {
        const made = suggestedFor(each);
        const shown = sizesToShow(made.layout.garments[0] ?? fail()).map(keyOf);
        expect(layoutFault({ ...made.layout, prints: [made.grouped] })).toBeNull();
        expect(made.suggestion.widthsUm).toEqual(widthsOn(made.grouped, shown));
        expectAnchored(made);
        for (const key of shown) expectShareKept(made, key);
        for (const key of offeredSizes(made.layout.garments[0] ?? fail()).map(keyOf)) expectFittingJoined(made, key);
      }),
      { numRuns: 30 },
    );
  }, 60_000);
});

function widthsDownFrom(idealUm: number, stepUm: number): number[] {
  const from = Math.max(1, Math.round(idealUm / stepUm));
  return Array.from({ length: from }, (_, down) => (from - down) * stepUm).filter((um) => um >= idealUm / 4);
}

function fitsOn(
  layout: LayoutDocument,
  print: Print,
  key: SizeKey,
  readings: { widthUm: number; dropUm: number; acrossUm: number },
): boolean {
  const alone = { ...print, sizeGroups: [{ ...readings, groupId: 'alone', members: [key] }] };
  const garments = layout.garments.map((garment) => ({ ...garment, counts: [{ ...key, quantity: 1 }] }));
  return printFit({ garments }, alone).every(({ findings }) => findings.length === 0);
}
