import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bidiLevels, inVisualOrder } from '@/lib/domain/lettering/shaping/bidi-levels';
import { characterCases, classCases, hasBidiTests, isAsExpected } from '../../bench/lettering/bidi-lines';

if (!hasBidiTests) {
  console.log(
    'skipped: the Unicode Character Database (Debian: unicode-data) is not installed, line order is not compared',
  );
}

describe.runIf(hasBidiTests)('the order of mixed lines', () => {
  // A part of the cases; the bench goes through all of them.
  it('is that of the Unicode test cases with their own characters', () => {
    const cases = characterCases(23);
    expect(cases.length).toBeGreaterThan(3_000);
    expect(cases.filter((each) => !isAsExpected(each))).toEqual([]);
  });

  it('is that of the Unicode test cases by class', () => {
    const cases = classCases(211);
    expect(cases.length).toBeGreaterThan(3_000);
    expect(cases.filter((each) => !isAsExpected(each))).toEqual([]);
  });
});

describe('levels of a line', () => {
  it('take letters beyond the Basic Multilingual Plane whole', () => {
    // Adlam (U+1E900 and on) runs right to left: UnicodeData.txt, Bidi_Class R.
    expect([...bidiLevels('\u{1e900}\u{1e901} a', null)]).toEqual([1, 1, 1, 1, 1, 2]);
  });

  it('are those of one line whatever it holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(bidiLevels(text)).toHaveLength(text.length);
      }),
    );
  });

  it('only change places, and lose nothing', () => {
    const stretches = fc.array(fc.record({ level: fc.integer({ min: 0, max: 4 }), id: fc.nat() }), { maxLength: 12 });
    fc.assert(
      fc.property(stretches, (all) => {
        expect(new Set(inVisualOrder(all))).toEqual(new Set(all));
      }),
    );
  });
});
