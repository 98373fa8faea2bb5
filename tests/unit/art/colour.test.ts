import { describe, expect, it } from 'vitest';
import { ciede2000, hexDifference } from '@/lib/domain/art/colour/ciede2000';
import { hexOfRgb, labOfHex } from '@/lib/domain/art/colour/lab';
import sharma from '../../data/ciede2000-sharma-34.json';
import srgbLab from '../../data/srgb-lab-reference.json';

// Source: Sharma, Wu, Dalal, Color Research & Application 30 (2005), Table 1.
describe('how far apart two colours look', () => {
  it('agrees with the 34 published pairs, both ways round', () => {
    expect(sharma.rows).toHaveLength(34);
    for (const [l1 = 0, a1 = 0, b1 = 0, l2 = 0, a2 = 0, b2 = 0, dE00 = -1] of sharma.rows) {
      const [one, other] = [
        { l: l1, a: a1, b: b1 },
        { l: l2, a: a2, b: b2 },
      ];
      expect(Math.abs(ciede2000(one, other) - dE00)).toBeLessThanOrEqual(sharma.tolerance);
      expect(Math.abs(ciede2000(other, one) - dE00)).toBeLessThanOrEqual(sharma.tolerance);
    }
  });

  it('is nothing between a colour and itself, and 100 from black to white', () => {
    expect(hexDifference('#1B2A4A', '#1b2a4a')).toBe(0);
    expect(hexDifference('#000000', '#FFFFFF')).toBeCloseTo(100, 3);
  });
});

// Source: two colour libraries that agree to four decimals.
describe('sRGB in L*a*b*', () => {
  it('agrees with the reference colours', () => {
    expect(srgbLab.rows.length).toBeGreaterThan(5);
    for (const { hex, labD65 } of srgbLab.rows) {
      const { l, a, b } = labOfHex(hex);
      for (const [index, value] of [l, a, b].entries()) expect(value).toBeCloseTo(labD65[index] ?? Number.NaN, 2);
    }
  });

  it('refuses what is no colour', () => {
    expect(() => labOfHex('navy')).toThrow('navy');
    expect(hexOfRgb(0, 10, 255)).toBe('#000AFF');
  });
});
