import { describe, expect, it } from 'vitest';
import { hangBlank, MOST_BLANKS, takeDownBlank } from '@/lib/domain/layout/blank-edits';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { setCounts } from '@/lib/domain/layout/garment-edits';
import { inkHeightUm } from '@/lib/domain/layout/placement';
import { umFromInches } from '@/lib/domain/measure/length';
import { hung, newId, oneGarment, printed, readingsOn, withHung } from './hung-sample';
import { LEAF } from './sample-layout';

function edited(result: ReturnType<typeof hangBlank>): LayoutDocument {
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  expect(layoutFault(result.layout)).toBeNull();
  return result.layout;
}

/** The first print as the maker left it: every group another width and drop. */
function setByHand(layout: LayoutDocument, widthInches: number, dropInches: number): LayoutDocument {
  return {
    ...layout,
    prints: layout.prints.map((print) => ({
      ...print,
      sizeGroups: print.sizeGroups.map((group) => ({
        ...group,
        widthUm: umFromInches(widthInches),
        dropUm: umFromInches(dropInches),
      })),
    })),
  };
}

describe('hanging one more blank', () => {
  it('gives a print the starting values of the new band, and leaves those set by hand alone', () => {
    const adult = hung('crew-tee-adult');
    const youth = hung('crew-tee-youth');
    const before = setByHand(printed(oneGarment(adult), 'fullFront'), 9.5, 3.25);
    const after = edited(hangBlank(before, 'tee', youth, newId));
    // Common practice, no source: a full front starts 7 1/2 in wide, 2 1/2 in down on a youth garment.
    expect(readingsOn(after, { blankId: youth.blankId, sizeId: 'S' })).toEqual({
      widthUm: umFromInches(7.5),
      dropUm: umFromInches(2.5),
      acrossUm: 0,
    });
    expect(readingsOn(after, { blankId: adult.blankId, sizeId: 'S' })).toMatchObject({ widthUm: umFromInches(9.5) });
    expect(after.prints[0]?.sizeGroups.map(({ members }) => members.length)).toEqual([5, 8]);
  });

  it('lists the smallest band first', () => {
    const after = edited(hangBlank(oneGarment(hung('crew-tee-adult')), 'tee', hung('crew-tee-toddler'), newId));
    const more = edited(hangBlank(after, 'tee', hung('crew-tee-youth'), newId));
    expect(more.garments[0]?.blanks.map(({ ageBand }) => ageBand)).toEqual(['toddler', 'youth', 'adult']);
  });

  it('caps a tall picture as it is capped on any garment of the band', () => {
    const tall = { ...LEAF, inkBox: { x: 0, y: 0, width: 200, height: 800 } };
    const youth = hung('crew-tee-youth');
    const before = printed(oneGarment(hung('crew-tee-adult')), 'fullFront', ['tee'], tall);
    const { widthUm } = readingsOn(edited(hangBlank(before, 'tee', youth, newId)), {
      blankId: youth.blankId,
      sizeId: 'M',
    });
    // Common practice, no source: no taller than 10 in on a youth front.
    expect(Math.abs(inkHeightUm(tall, widthUm) - umFromInches(10))).toBeLessThanOrEqual(10);
  });

  it('prints a second style of a band as the nearest size of the first was set by hand', () => {
    const first = hung('crew-tee-adult');
    const second = hung('crew-tee-adult', { shopBlankId: 'heavy' });
    const before = printed(oneGarment(first), 'leftChest');
    const wide = before.prints[0]?.sizeGroups[1]?.members[0];
    if (!wide) throw new Error('a left chest starts with one group');
    const after = edited(hangBlank(setByHand(before, 3, 7.5), 'tee', second, newId));
    expect(after.prints[0]?.sizeGroups).toHaveLength(2);
    for (const { sizeId } of first.sizes) {
      expect(readingsOn(after, { blankId: second.blankId, sizeId })).toEqual(
        readingsOn(after, { blankId: first.blankId, sizeId }),
      );
    }
  });

  it('refuses sizes that a place does not suit, naming the print, and changes nothing', () => {
    const before = printed(oneGarment(hung('crew-tee-adult')), 'leftChest');
    const toddler = hangBlank(before, 'tee', hung('crew-tee-toddler'), newId);
    expect(toddler).toEqual({
      ok: false,
      refusal: { reason: 'placeDoesNotSuit', print: { name: 'Leaf', locationId: 'leftChest' } },
    });
  });

  it('refuses another kind, the same style twice, and more than a garment holds', () => {
    const layout = oneGarment(hung('crew-tee-adult'));
    expect(hangBlank(layout, 'tee', hung('tote-adult'), newId)).toMatchObject({ refusal: { reason: 'otherKind' } });
    expect(hangBlank(layout, 'tee', hung('crew-tee-adult'), newId)).toMatchObject({
      refusal: { reason: 'alreadyHung' },
    });
    let full = layout;
    for (let each = 1; each < MOST_BLANKS; each += 1)
      full = edited(hangBlank(full, 'tee', hung('crew-tee-adult', { shopBlankId: `style ${each}` }), newId));
    expect(hangBlank(full, 'tee', hung('crew-tee-youth'), newId)).toMatchObject({
      refusal: { reason: 'tooManyBlanks' },
    });
  });

  it('gives the new sizes readings in a print that is on another garment, too', () => {
    const hood = hung('zip-hood-adult');
    const youth = hung('crew-tee-youth');
    const both = withHung(oneGarment(hung('crew-tee-adult')), 'hood', hood);
    const before = printed(both, 'leftChest', ['tee', 'hood']);
    expect(before.prints).toHaveLength(1);
    const after = edited(hangBlank(before, 'tee', youth, newId));
    expect(readingsOn(after, { blankId: youth.blankId, sizeId: 'XS' }).dropUm).toBe(umFromInches(6));
    expect(readingsOn(after, { blankId: hood.blankId, sizeId: 'M' })).toEqual(
      readingsOn(before, { blankId: hood.blankId, sizeId: 'M' }),
    );
  });
});

describe('taking a blank down', () => {
  const youth = hung('crew-tee-youth');
  const adult = hung('crew-tee-adult');
  const both = printed(oneGarment(youth, adult), 'fullFront');

  it('takes its sizes out of every print, and nothing else', () => {
    const after = edited(takeDownBlank(both, 'tee', youth.blankId));
    expect(after.garments[0]?.blanks).toEqual([adult]);
    expect(after.prints[0]?.sizeGroups.flatMap(({ members }) => members)).toHaveLength(8);
  });

  it('refuses while any of its sizes is ordered, and for the last blank', () => {
    const ordered = setCounts(both, 'tee', [{ blankId: youth.blankId, sizeId: 'M', quantity: 2 }]);
    expect(takeDownBlank(ordered, 'tee', youth.blankId)).toMatchObject({ refusal: { reason: 'counted' } });
    expect(takeDownBlank(oneGarment(adult), 'tee', adult.blankId)).toMatchObject({ refusal: { reason: 'lastBlank' } });
    expect(takeDownBlank(both, 'tee', 'gone')).toMatchObject({ refusal: { reason: 'noBlank' } });
  });

  it('refuses while somebody on the list is to get one', () => {
    const item = { itemId: 'i', garmentId: 'tee', blankId: youth.blankId, sizeId: 'S', quantity: 1 };
    const people = { columns: [], lines: [{ personId: 'p', fields: {}, items: [item] }] };
    expect(takeDownBlank({ ...both, people }, 'tee', youth.blankId)).toMatchObject({ refusal: { reason: 'counted' } });
  });

  it('undoes hanging it', () => {
    const before = printed(oneGarment(adult), 'fullFront');
    const after = edited(takeDownBlank(edited(hangBlank(before, 'tee', youth, newId)), 'tee', youth.blankId));
    expect(after).toEqual(before);
  });
});
