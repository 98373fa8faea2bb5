import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  mmFromUm,
  roundUm,
  tradeStepUm,
  UM_PER_CM,
  UM_PER_INCH,
  UM_PER_MM,
  umFromInches,
  umFromMm,
} from '@/lib/domain/measure/length';
import units from '../../data/physical-units.json';

// Source of every value in physical-units.json: CSS Values and Units Level 4 (in, cm, mm), ISO/IEC 7810 ID-1, ISO 216,
// ANSI/ASME Y14.1, PNG Third Edition 11.3.4.3, each marked there.

describe('lengths', () => {
  it('has 25.4 mm in an inch (NIST SP 811, Appendix B.8)', () => {
    expect(UM_PER_INCH).toBe(25_400);
    expect(mmFromUm(umFromInches(1))).toBe(25.4);
    expect(UM_PER_INCH / UM_PER_CM).toBe(units.css.in_cm);
  });

  it('states an identity card and paper sizes exactly in both units', () => {
    expect(umFromMm(units.idCard.width_mm)).toBe(85_600);
    expect(umFromMm(units.idCard.height_mm)).toBe(53_980);
    expect(units.paper.Letter_in.map((inches) => mmFromUm(umFromInches(inches)))).toEqual(units.paper.Letter_mm);
  });

  it.each(Object.entries(units.png.ppu))('writes %s px per inch as %i px per metre', (perInch, perMetre) => {
    expect(Math.round((Number(perInch) * 1_000_000) / UM_PER_INCH)).toBe(perMetre);
  });

  it('holds an eighth of an inch and a tenth of a centimetre without remainder', () => {
    expect(Number.isInteger(UM_PER_INCH / 8)).toBe(true);
    expect(Number.isInteger(UM_PER_CM / 10)).toBe(true);
    expect([tradeStepUm('in'), tradeStepUm('cm')]).toEqual([3_175, 2 * UM_PER_MM]);
  });

  it('rounds a half away from zero, and left as right', () => {
    expect([roundUm(0.5), roundUm(-0.5), roundUm(2.5), roundUm(-2.5)]).toEqual([1, -1, 3, -3]);
    fc.assert(fc.property(fc.double({ noNaN: true, min: -1e7, max: 1e7 }), (um) => roundUm(-um) + roundUm(um) === 0));
  });

  it('never answers with minus zero', () => {
    expect(Object.is(roundUm(-0.2), 0)).toBe(true);
  });

  it('comes back from millimetres as it went', () => {
    fc.assert(fc.property(fc.integer({ min: -10_000_000, max: 10_000_000 }), (um) => umFromMm(mmFromUm(um)) === um));
  });
});
