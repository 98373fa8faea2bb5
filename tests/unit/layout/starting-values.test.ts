import { describe, expect, it } from 'vitest';
import { sizesWithoutGroup } from '@/lib/domain/layout/garment-edits';
import { LOCATION_IDS, LOCATIONS, locationsOn } from '@/lib/domain/layout/locations';
import { groupFor } from '@/lib/domain/layout/sizes';
import { umFromInches } from '@/lib/domain/measure/length';
import { LEAF, teeWithPrints } from './sample-layout';

describe('starting values', () => {
  it.each(LOCATION_IDS)('give every size of a tee its group at %s', (locationId) => {
    const layout = teeWithPrints([locationId]);
    for (const print of layout.prints) expect(sizesWithoutGroup(layout, print)).toEqual([]);
  });

  // Common practice, no source.
  it('set an adult full front 10 in wide, 3 in below the collar, in the middle', () => {
    const [print] = teeWithPrints(['fullFront']).prints;
    if (!print) throw new Error('no print');
    expect(groupFor(print, { blankId: 'crew-tee-adult', sizeId: 'M' })).toMatchObject({
      widthUm: umFromInches(10),
      dropUm: umFromInches(3),
      acrossUm: 0,
    });
  });

  it('move a left chest print out on the widest sizes', () => {
    const [print] = teeWithPrints(['leftChest']).prints;
    if (!print) throw new Error('no print');
    const across = (sizeId: string) => groupFor(print, { blankId: 'crew-tee-adult', sizeId }).acrossUm;
    expect([across('XL'), across('2XL')]).toEqual([umFromInches(4), umFromInches(5)]);
  });

  it('make a tall picture narrower rather than let it run down the garment', () => {
    const tall = { ...LEAF, inkBox: { ...LEAF.inkBox, width: 200, height: 700 } };
    const [print] = teeWithPrints(['fullFront'], tall).prints;
    if (!print) throw new Error('no print');
    const { widthUm } = groupFor(print, { blankId: 'crew-tee-adult', sizeId: 'M' });
    expect((widthUm * 700) / 200).toBeCloseTo(LOCATIONS.fullFront.starting.adult?.tallestUm ?? 0, -1);
  });

  it('are offered only where every age band has them', () => {
    expect(locationsOn('front', ['adult', 'toddler']).map(({ id }) => id)).toEqual(['fullFront', 'centreChest']);
    expect(locationsOn('back', ['adult']).map(({ id }) => id)).toEqual(['upperBack', 'fullBack', 'backNeck']);
  });
});
