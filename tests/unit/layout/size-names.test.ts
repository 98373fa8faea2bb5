import { expect, it } from 'vitest';
import { countRows } from '@/components/specification/count-rows';
import { groupWords } from '@/components/table/group-words';
import { GARMENT_KINDS, isSizedByWearer } from '@/lib/domain/garment/kinds';
import type { GarmentBlank } from '@/lib/domain/layout/document';
import { setCounts } from '@/lib/domain/layout/garment-edits';
import { garmentOf, middleOf, offeredSizes, sizeName } from '@/lib/domain/layout/sizes';
import { frozenScenes } from '@/lib/domain/revision/frozen-scenes';
import { viewGarmentSchema, viewGarments } from '@/lib/domain/revision/view';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';
import { hung, oneGarment } from './hung-sample';

const readings = translatorFor('en', 'readings');

function named(name: string, blank: GarmentBlank): GarmentBlank {
  return { ...blank, name, sizes: blank.sizes.slice(0, 2) };
}

const youth = named('Youth tee', hung('crew-tee-youth', { blankId: 'youth' }));
const light = named('Light tee', hung('crew-tee-adult', { blankId: 'light' }));
const heavy = named('Heavy tee', hung('crew-tee-adult', { blankId: 'heavy' }));

function saidSizes(...blanks: GarmentBlank[]): string[] {
  return offeredSizes(garmentOf(oneGarment(...blanks), 'tee')).map((size) => sizeWords(readings, sizeName(size)));
}

it('sizes carry their style’s name where two styles of a garment are for one age band, and only there', () => {
  expect(saidSizes(youth, light)).toEqual(['Youth XS', 'Youth S', 'S', 'M']);
  expect(saidSizes(youth, light, heavy)).toEqual([
    'Youth XS',
    'Youth S',
    'S (Light tee)',
    'M (Light tee)',
    'S (Heavy tee)',
    'M (Heavy tee)',
  ]);
});

it('so do the spans of sizes a group covers', () => {
  const layout = oneGarment(youth, light, heavy);
  const members = [youth, light, heavy].flatMap(({ blankId, sizes }) =>
    sizes.map(({ sizeId }) => ({ blankId, sizeId })),
  );
  expect(groupWords(readings, garmentOf(layout, 'tee'), members)).toBe('Youth XS–S, S–M (Light tee), S–M (Heavy tee)');
});

it('so do the sizes of a sent revision and the counts of its specification', () => {
  const layout = setCounts(oneGarment(youth, light, heavy), 'tee', [
    { blankId: 'youth', sizeId: 'S', quantity: 1 },
    { blankId: 'light', sizeId: 'M', quantity: 2 },
    { blankId: 'heavy', sizeId: 'M', quantity: 3 },
  ]);
  const [view] = viewGarments(
    layout,
    frozenScenes(layout, 'in', () => ({ d: 'M0 0Z', widthMm: 10 })),
  );
  const kept = viewGarmentSchema.parse(JSON.parse(JSON.stringify(view)));
  expect(kept.sizes.map((size) => sizeWords(readings, size))).toEqual(['Youth S', 'M (Light tee)', 'M (Heavy tee)']);
  expect(countRows('en', kept).map(({ band, total }) => [band, total])).toEqual([
    ['Adult, Light tee', 2],
    ['Adult, Heavy tee', 3],
    ['Youth', 1],
  ]);
});

it('the one size that is drawn is the middle one, the smaller of two', () => {
  expect(middleOf(['S', 'M', 'L'])).toBe('M');
  expect(middleOf(['S', 'M', 'L', 'XL'])).toBe('M');
  expect(middleOf([])).toBeUndefined();
});

it('sizes of what nobody wears in a size of their own go under no age', () => {
  expect(GARMENT_KINDS.filter((kind) => !isSizedByWearer(kind))).toEqual(['capFront', 'tote', 'apron', 'plainPanel']);
  const tote = hung('tote-adult', { blankId: 'tote' });
  const layout = setCounts(oneGarment(tote), 'tee', [
    { blankId: 'tote', sizeId: tote.sizes[0]?.sizeId ?? '', quantity: 4 },
  ]);
  const [view] = viewGarments(
    layout,
    frozenScenes(layout, 'in', () => ({ d: 'M0 0Z', widthMm: 10 })),
  );
  expect(countRows('en', view ?? { sizes: [] }).map(({ band }) => band)).toEqual(['each size']);
});
