import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inkPxPerInch, sharpnessAt, sharpnessLimits } from '@/lib/domain/art/sharpness';
import { formatLimit } from '@/lib/domain/measure/format-length';
import { umFromInches } from '@/lib/domain/measure/length';

describe('sharpness', () => {
  // Common practice, no source: 300 px per printed inch is sharp, 200 is fair.
  it('prints a picture of 1500 px sharp to 5.00 in', () => {
    const { sharpUm, fairUm } = sharpnessLimits(1500);
    expect(sharpUm).toBe(umFromInches(5));
    expect(formatLimit(sharpUm, 'in')).toBe('5.0 in');
    expect(fairUm).toBe(umFromInches(7.5));
  });

  it('turns from sharp to fair to soft exactly past its limits', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 20_000 }), (inkWidthPx) => {
        const { sharpUm, fairUm } = sharpnessLimits(inkWidthPx);
        expect([sharpUm, sharpUm + 1, fairUm, fairUm + 1].map((um) => sharpnessAt(inkWidthPx, um))).toEqual([
          'sharp',
          'fair',
          'fair',
          'soft',
        ]);
      }),
    );
  });

  it('counts the pixels of an inch', () => {
    expect(inkPxPerInch(3000, umFromInches(10))).toBe(300);
  });
});
