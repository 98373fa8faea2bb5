import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FULL_TURN_CENTIDEG, normaliseTurn, radiansFromCentideg } from '@/lib/domain/measure/angle';

describe('angles', () => {
  it('has 2π radians in a whole turn', () => {
    expect(radiansFromCentideg(FULL_TURN_CENTIDEG)).toBeCloseTo(2 * Math.PI, 15);
    expect(radiansFromCentideg(9_000)).toBeCloseTo(Math.PI / 2, 15);
  });

  it('brings every turn into half a turn either way without changing where it points', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), (turn) => {
        const within = normaliseTurn(turn);
        expect(within).toBeGreaterThan(-18_000);
        expect(within).toBeLessThanOrEqual(18_000);
        expect(Math.abs((turn - within) % FULL_TURN_CENTIDEG)).toBe(0);
      }),
    );
  });
});
