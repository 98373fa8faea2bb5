import { describe, expect, it } from 'vitest';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { acrossSign } from '@/lib/domain/layout/placement';
import { acrossReading } from '@/lib/domain/layout/readings';

describe('a distance across', () => {
  it.each([
    ['leftChest', 'wearersLeft', 1],
    ['fullBack', 'wearersLeft', -1],
    ['leftSleeve', 'front', -1],
    ['rightSleeve', 'front', 1],
    ['toteFront', 'right', 1],
    ['toteBack', 'left', -1],
  ] as const)(
    'at %s is said towards %s where it is positive, which is on the viewer’s right by %d',
    (id, towards, sign) => {
      const location = LOCATIONS[id];
      expect(acrossReading(12_700, location)).toEqual({ towards, um: 12_700 });
      expect(acrossReading(-12_700, location).um).toBe(12_700);
      expect(acrossSign(location.side)).toBe(sign);
    },
  );

  it('of nothing is in the middle, wherever it is', () => {
    expect(acrossReading(0, LOCATIONS.leftSleeve)).toEqual({ towards: 'centre', um: 0 });
  });
});
