import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, formatLengthApart, formatLengthValue, formatLimit } from '@/lib/domain/measure/format-length';
import { type LengthUnit, LONGEST_LENGTH_UM, UM_PER_CM, UM_PER_INCH, umFromInches } from '@/lib/domain/measure/length';
import { isLengthStep, parseLength } from '@/lib/domain/measure/parse-length';

const um = fc.integer({ min: -2_000_000, max: 2_000_000 });
const unit = fc.constantFrom<LengthUnit>('in', 'cm');
const shownStepUm: Record<LengthUnit, number> = { in: UM_PER_INCH / 8, cm: UM_PER_CM / 10 };

function read(written: string, inUnit: LengthUnit = 'in'): number {
  const parsed = parseLength(written, inUnit);
  if (!parsed.ok) throw new Error(`${written}: ${parsed.reason}`);
  return parsed.um;
}

describe('reading and writing lengths', () => {
  it('reads back what it shows, within half a step of what was shown', () => {
    fc.assert(
      fc.property(um, unit, (length, inUnit) => {
        const back = read(formatLength(length, inUnit), inUnit === 'in' ? 'cm' : 'in');
        expect(Math.abs(back - length)).toBeLessThanOrEqual(shownStepUm[inUnit] / 2);
      }),
    );
  });

  it('shows the same after reading back what it shows', () => {
    fc.assert(
      fc.property(um, unit, (length, inUnit) => {
        const shown = formatLength(length, inUnit);
        expect(formatLength(read(shown, inUnit), inUnit)).toBe(shown);
      }),
    );
  });

  it('reads every whole step exactly', () => {
    fc.assert(
      fc.property(fc.integer({ min: -600, max: 600 }), unit, (steps, inUnit) => {
        expect(read(formatLength(steps * shownStepUm[inUnit], inUnit), inUnit)).toBe(steps * shownStepUm[inUnit]);
      }),
    );
  });

  it('shows a length and its opposite alike but for the sign', () => {
    fc.assert(
      fc.property(um, unit, (length, inUnit) => {
        const [there, back] = [formatLengthValue(length, inUnit), formatLengthValue(-length, inUnit)];
        expect(back.replace(/^-/, '')).toBe(there.replace(/^-/, ''));
      }),
    );
  });

  it('never shows an inch as a decimal or a fraction that could be shorter', () => {
    fc.assert(
      fc.property(um, (length) => {
        expect(formatLength(length, 'in')).toMatch(
          /^-?(0|\d+|\d+ (1\/2|[13]\/4|[1357]\/8)|(1\/2|[13]\/4|[1357]\/8)) in$/,
        );
      }),
    );
  });

  it.each([
    ['3 1/2', 3.5],
    ['3.5"', 3.5],
    ['3½', 3.5],
    ['3 ½ in', 3.5],
    ['3-1/2', 3.5],
    ['3⁄4', 0.75],
    ['1,5', 1.5],
    ['-1/8', -0.125],
    ['−2', -2],
    ['.5', 0.5],
    ['10 inches', 10],
    ['12”', 12],
  ])('reads %s as %f in', (written, inches) => {
    expect(read(written)).toBe(umFromInches(inches));
  });

  it.each([
    ['9cm', 90_000],
    ['90 mm', 90_000],
    ['8,5 CM', 85_000],
  ])('reads %s whatever the shop thinks in', (written, expected) => {
    expect([read(written, 'in'), read(written, 'cm')]).toEqual([expected, expected]);
  });

  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['three', 'notALength'],
    ['3 4', 'notALength'],
    ['3 1/2 ft', 'notALength'],
    ['1/0', 'divisionByZero'],
    ['400 in', 'tooLong'],
    ['NaN', 'notALength'],
    ['1e3', 'notALength'],
  ])('says why %j is no length', (written, reason) => {
    expect(parseLength(written, 'in')).toEqual({ ok: false, reason });
  });

  it('never throws, and never answers with what is not whole micrometres', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), unit, (written, inUnit) => {
        const parsed = parseLength(written, inUnit);
        if (parsed.ok) {
          expect(Number.isInteger(parsed.um)).toBe(true);
          expect(Math.abs(parsed.um)).toBeLessThanOrEqual(LONGEST_LENGTH_UM);
        }
      }),
    );
  });

  it('tells a step from a reading', () => {
    expect([isLengthStep('+1/8'), isLengthStep(' + 2mm'), isLengthStep('-1'), isLengthStep('1')]).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  it('shows two readings finer until they differ', () => {
    expect(formatLengthApart(umFromInches(3), umFromInches(3.05), 'in')).toBe('3 in');
    expect(formatLengthApart(umFromInches(3.05), umFromInches(3), 'in')).toBe('3 1/16 in');
    expect(formatLengthApart(umFromInches(3.013), umFromInches(3), 'in')).toBe('3 1/64 in');
    expect(formatLengthApart(90_400, 90_000, 'cm')).toBe('9.04 cm');
    expect(formatLengthApart(90_000, 120_000, 'cm')).toBe('9 cm');
  });

  it('states a limit rounded down, so that it holds', () => {
    expect(formatLimit(umFromInches(5), 'in')).toBe('5.0 in');
    expect(formatLimit(umFromInches(5) - 1, 'in')).toBe('4.9 in');
    expect(formatLimit(umFromInches(5), 'cm')).toBe('12.7 cm');
  });
});
