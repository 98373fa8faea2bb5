import { describe, expect, it } from 'vitest';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import { type StyleToHang, styleOfChart } from '@/lib/domain/layout/blank-from-style';
import type { GarmentBlank, LayoutDocument } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { setCounts } from '@/lib/domain/layout/garment-edits';
import type { Photograph } from '@/lib/domain/layout/photograph';
import { chartChanges, isChartAsTaken, takeChart } from '@/lib/domain/layout/take-chart';
import { umFromInches } from '@/lib/domain/measure/length';
import { hung, newId, oneGarment, printed, readingsOn } from './hung-sample';

const before = hung('crew-tee-adult', { shopBlankId: 'listed' });
const ordered = setCounts(printed(oneGarment(before), 'leftChest'), 'tee', [
  { blankId: before.blankId, sizeId: 'M', quantity: 4 },
]);

function taken(layout: LayoutDocument, fresh: GarmentBlank): LayoutDocument {
  const result = takeChart(layout, 'tee', fresh, newId);
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  expect(layoutFault(result.layout)).toBeNull();
  return result.layout;
}

/** The blank with one size edited. */
function withSize(
  blank: GarmentBlank,
  label: string,
  edit: (size: GarmentBlank['sizes'][number]) => GarmentBlank['sizes'][number],
): GarmentBlank {
  return { ...blank, sizes: blank.sizes.map((size) => (size.label === label ? edit(size) : size)) };
}

const wider = withSize(before, 'L', (size) => ({
  ...size,
  measuresUm: { ...size.measuresUm, chestWidth: umFromInches(23) },
}));

function photographOfSize(sizeId: string): Photograph {
  const about = { sha256: 'a'.repeat(64), widthPx: 900, heightPx: 1_200, colourName: 'Navy' };
  return { ...about, side: 'front', sizeId, matrix: [0.5, 0, 0, 0.5, -200, -50] };
}

describe('a chart that changed', () => {
  it('is no change where nothing did', () => {
    expect(chartChanges(before, structuredClone(before))).toBeNull();
  });

  it('is said by size and measure', () => {
    expect(chartChanges(before, wider)).toEqual({
      measures: [{ label: 'L', measure: 'chestWidth', fromUm: umFromInches(22), toUm: umFromInches(23) }],
      added: [],
      gone: [],
      renamed: [],
      besides: false,
    });
  });

  it('says what came, what went and what is called something else', () => {
    const other = withSize({ ...before, sizes: before.sizes.slice(1) }, '2XL', (size) => ({ ...size, label: 'XXL' }));
    const grown = { ...other, sizes: [...other.sizes, { ...before.sizes[0], sizeId: 'new', label: '6XL' }] };
    expect(chartChanges(before, grown as GarmentBlank)).toMatchObject({
      added: ['6XL'],
      gone: ['S'],
      renamed: [{ from: '2XL', to: 'XXL' }],
    });
  });

  it('is noticed where only something besides the measures is other', () => {
    expect(chartChanges(before, { ...before, fabric: 'Polyester' })).toMatchObject({ measures: [], besides: true });
  });
});

describe('a style beside the blank that was made from it', () => {
  const chart = starterChart('crew-tee-adult');
  if (!chart) throw new Error('no chart of tees');
  const style = styleOfChart(chart, { name: before.name, fabric: before.fabric });
  const edited = (edit: (style: StyleToHang) => void) => {
    const mine = structuredClone(style);
    edit(mine);
    return mine;
  };

  it('is as it was taken while it gives the same', () => {
    expect(isChartAsTaken(before, style)).toBe(true);
  });

  it.each<[string, (style: StyleToHang) => void]>([
    ['another measure', ({ sizes }) => Object.assign(sizes[1]?.entered ?? {}, { chestWidth: umFromInches(21) })],
    ['one more measure', ({ sizes }) => Object.assign(sizes[1]?.entered ?? {}, { neckWidth: umFromInches(7) })],
    ['another label', ({ sizes }) => Object.assign(sizes[1] ?? {}, { label: 'Medium' })],
    ['a size less', (mine) => Object.assign(mine, { sizes: mine.sizes.slice(1) })],
    ['another tolerance', ({ cutToleranceUm }) => Object.assign(cutToleranceUm, { longUm: 1 })],
    ['another name', (mine) => Object.assign(mine, { name: 'Other' })],
  ])('is not with %s', (_what, edit) => {
    expect(isChartAsTaken(before, edited(edit))).toBe(false);
  });
});

describe('taking a chart as it is now', () => {
  it('brings the measures and keeps counts and readings', () => {
    const after = taken(ordered, wider);
    expect(after.garments[0]?.blanks[0]).toEqual(wider);
    expect(after.garments[0]?.counts).toEqual(ordered.garments[0]?.counts);
    expect(after.prints).toEqual(ordered.prints);
    expect(chartChanges(wider, after.garments[0]?.blanks[0] ?? before)).toBeNull();
  });

  it('prints new sizes as the nearest one is printed', () => {
    const [small] = before.sizes;
    if (!small) throw new Error('a chart without sizes');
    const fresh = { ...before, sizes: [{ ...small, sizeId: 'xs', label: 'XS' }, ...before.sizes] };
    const after = taken(ordered, fresh);
    expect(readingsOn(after, { blankId: before.blankId, sizeId: 'xs' })).toEqual(
      readingsOn(ordered, { blankId: before.blankId, sizeId: 'S' }),
    );
    expect(after.prints[0]?.sizeGroups).toHaveLength(2);
  });

  it('knows sizes that came under new ids by their labels', () => {
    const renewed = { ...before, sizes: before.sizes.map((size) => ({ ...size, sizeId: `row of ${size.label}` })) };
    const after = taken(ordered, renewed);
    expect(after.garments[0]?.counts).toEqual([{ blankId: before.blankId, sizeId: 'row of M', quantity: 4 }]);
    expect(readingsOn(after, { blankId: before.blankId, sizeId: 'row of 3XL' })).toEqual(
      readingsOn(ordered, { blankId: before.blankId, sizeId: '3XL' }),
    );
  });

  it('lets sizes go that nobody ordered, and names those that somebody did', () => {
    const without = (label: string) => ({ ...before, sizes: before.sizes.filter((size) => size.label !== label) });
    const after = taken(ordered, without('S'));
    expect(after.prints[0]?.sizeGroups.flatMap(({ members }) => members)).toHaveLength(7);
    expect(takeChart(ordered, 'tee', without('M'), newId)).toEqual({
      ok: false,
      refusal: { reason: 'countedSizesGone', labels: ['M'] },
    });
  });

  it('keeps photographs on sizes drawn as before alone, under their new ids', () => {
    const photographed = {
      ...ordered,
      garments: ordered.garments.map((garment) => ({
        ...garment,
        blanks: [{ ...before, photographs: ['S', 'M', 'L'].map(photographOfSize) }],
      })),
    };
    const renewed = withSize(wider, 'M', (size) => ({ ...size, sizeId: 'row of M' }));
    const after = taken(photographed, { ...renewed, sizes: renewed.sizes.slice(1) });
    expect(after.garments[0]?.blanks[0]?.photographs).toEqual([photographOfSize('row of M')]);
    expect(taken(ordered, wider).garments[0]?.blanks[0]).not.toHaveProperty('photographs');
    // What the garment is shown on has to be set to scale anew, so it is told from one shown as drawn.
    const longer = before.sizes.map((size) => ({ ...size, measuresUm: { ...size.measuresUm, bodyLength: 800_000 } }));
    expect(taken(photographed, { ...before, sizes: longer }).garments[0]?.blanks[0]?.photographs).toEqual([]);
  });

  it('refuses a style that has become another kind', () => {
    expect(takeChart(ordered, 'tee', { ...before, kind: 'tote' }, newId)).toMatchObject({
      refusal: { reason: 'otherKind' },
    });
  });

  it('gives the sizes of an all-new chart the readings a print starts with', () => {
    const renewed = {
      ...before,
      sizes: before.sizes.map((size) => ({ ...size, sizeId: `n-${size.label}`, label: `n-${size.label}` })),
    };
    const empty = setCounts(ordered, 'tee', []);
    const after = taken(empty, renewed);
    expect(readingsOn(after, { blankId: before.blankId, sizeId: 'n-M' }).widthUm).toBe(umFromInches(3.5));
  });
});
