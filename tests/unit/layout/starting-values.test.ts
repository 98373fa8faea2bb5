import { describe, expect, it } from 'vitest';
import type { GarmentKind } from '@/lib/domain/garment/kinds';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import { blankFromChart, sizesWithoutGroup } from '@/lib/domain/layout/garment-edits';
import { LOCATION_IDS, LOCATIONS, locationsFitting, locationsOn, startingValues } from '@/lib/domain/layout/locations';
import { groupFor } from '@/lib/domain/layout/sizes';
import { startingGroups } from '@/lib/domain/layout/starting-groups';
import { umFromInches } from '@/lib/domain/measure/length';
import { LEAF, TEE_LOCATIONS, teeWithPrints } from './sample-layout';

describe('starting values', () => {
  it.each(TEE_LOCATIONS)('give every size of a tee its group at %s', (locationId) => {
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
    expect(locationsOn('back', ['adult']).map(({ id }) => id)).toEqual([
      'upperBack',
      'fullBack',
      'backNeck',
      'backNumber',
    ]);
  });

  it('are offered only where the kind of garment has the place', () => {
    const idsOn = (side: 'front' | 'back', kind: GarmentKind) =>
      locationsFitting(side, [{ kind, ageBand: 'adult' }]).map(({ id }) => id);
    expect(idsOn('front', 'zipHood')).toEqual(['leftChest', 'rightChest']);
    expect(idsOn('front', 'pulloverHood')).toContain('abovePocket');
    expect(idsOn('front', 'tote')).toEqual(['toteFront']);
    expect(idsOn('back', 'tote')).toEqual(['toteBack']);
    expect(idsOn('back', 'apron')).toEqual([]);
    expect(
      locationsFitting('front', [
        { kind: 'tote', ageBand: 'adult' },
        { kind: 'crewTee', ageBand: 'adult' },
      ]),
    ).toEqual([]);
  });

  it('put a print on a hooded back below where the hood lies', () => {
    for (const id of ['backNeck', 'upperBack', 'fullBack'] as const) {
      const [tee, hood] = (['crewTee', 'pulloverHood'] as const).map((kind) =>
        startingValues(id, { kind, ageBand: 'adult' }),
      );
      expect(hood?.dropUm ?? 0).toBeGreaterThan(tee?.dropUm ?? 0);
    }
  });

  it('measure a sleeve up from its hem to the foot of the print', () => {
    for (const id of LOCATION_IDS) {
      const { direction, starting, edge } = LOCATIONS[id];
      for (const values of Object.values(starting)) {
        expect(Math.sign(values.dropUm), id).toBe(direction === 'up' ? -1 : 1);
        expect(edge === 'bottom', id).toBe(direction === 'up');
      }
    }
  });

  it('keep two blanks of unlike kinds under one garment in groups of their own', () => {
    const blanks = ['crew-tee-adult', 'raglan-adult'].map((id) => {
      const chart = starterChart(id);
      if (!chart) throw new Error(`no chart ${id}`);
      return blankFromChart(chart, id, id, '');
    });
    let next = 0;
    const groups = startingGroups('fullBack', [{ blanks }], LEAF, () => `group-${++next}`);
    expect(groups?.map(({ members }) => new Set(members.map(({ blankId }) => blankId)))).toEqual([
      new Set(['crew-tee-adult']),
      new Set(['raglan-adult']),
    ]);
  });
});
