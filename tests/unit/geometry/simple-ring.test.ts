import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSimpleRing } from '@/lib/domain/geometry/simple-ring';
import { isSimple } from '../garment/rings';

const at = (x: number, y: number) => ({ x, y });

describe('a ring', () => {
  it.each([
    ['a square', [at(0, 0), at(10, 0), at(10, 10), at(0, 10), at(0, 0)], true],
    ['a bow tie', [at(0, 0), at(10, 10), at(10, 0), at(0, 10), at(0, 0)], false],
    [
      'a spike that goes back on itself',
      [at(0, 0), at(10, 0), at(10, 5), at(20, 5), at(10, 5), at(0, 10), at(0, 0)],
      true,
    ],
    [
      'a hook through its own side',
      [at(0, 0), at(10, 0), at(10, 10), at(5, 10), at(5, -3), at(0, 10), at(0, 0)],
      false,
    ],
  ])('is simple or not: %s', (_, ring, expected) => {
    expect(isSimpleRing(ring)).toBe(expected);
  });

  // Against holding every piece against every other.
  it('is found simple exactly where no two of its pieces cross', () => {
    const coordinate = fc.integer({ min: 0, max: 60 });
    const corners = fc.array(fc.record({ x: coordinate, y: coordinate }), { minLength: 3, maxLength: 7 });
    fc.assert(
      fc.property(corners, (points) => {
        const [first] = points;
        const ring = first ? [...points, first] : points;
        expect(isSimpleRing(ring)).toBe(isSimple(ring));
      }),
      { numRuns: 500 },
    );
  });
});
