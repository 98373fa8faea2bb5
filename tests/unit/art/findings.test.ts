import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hexDifference } from '@/lib/domain/art/colour/ciede2000';
import type { FindingCode } from '@/lib/domain/art/findings/art-finding';
import { artFindings } from '@/lib/domain/art/findings/art-findings';
import { USUAL_PRESS_LIMITS } from '@/lib/domain/art/findings/press-limits';
import { sharpnessHeadline } from '@/lib/domain/art/findings/real-detail';
import { UM_PER_MM, umFromInches } from '@/lib/domain/measure/length';
import { cleanFacts } from './facts-sample';

const WHITE = { name: 'White', hex: '#FFFFFF' };
const at = (inches: number, cloths = [WHITE]) => ({ widthUm: umFromInches(inches), cloths });

function codes(...given: Parameters<typeof artFindings>): FindingCode[] {
  return artFindings(...given).map(({ code }) => code);
}

describe('the findings of a picture at its printed size', () => {
  it('finds nothing in a clean picture that is printed small enough', () => {
    expect(codes(cleanFacts(), [], at(10))).toEqual([]);
  });

  // Common practice, no source: 300, 200 and 130 px to a printed inch.
  it('tells sharp, fair, soft and a blur apart at their limits', () => {
    const levels = [10, 10.01, 15, 15.01, 23, 23.2].map((inches) => {
      const blurry = artFindings(cleanFacts(), [], at(inches)).find(({ code }) => code === 'blurry');
      return blurry?.code === 'blurry' ? `${blurry.numbers.level} ${blurry.severity}` : null;
    });
    expect(levels).toEqual([null, 'fair notes', 'fair notes', 'soft stops', 'soft stops', 'blur stops']);
  });

  it('counts only the detail that is there of a picture that was enlarged', () => {
    const facts = cleanFacts({ detailShare: 0.25 });
    expect(sharpnessHeadline({ inkWidthPx: 3_000, facts })).toEqual({
      sharpUm: umFromInches(2.5),
      fairUm: umFromInches(3.75),
    });
    expect(codes(facts, [], at(2.5))).toEqual(['enlarged']);
    expect(codes(facts, [], at(4))).toEqual(['blurry', 'enlarged']);
  });

  it('names a width at which it passes for whatever hangs on the size', () => {
    const sized: readonly FindingCode[] = ['blurry', 'thinStrokes', 'thinGaps', 'tooLarge'];
    const px = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(
        px,
        px,
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.integer({ min: 20_000, max: 900_000 }),
        (stroke, gap, detailShare, widthUm) => {
          const facts = cleanFacts({
            detailShare,
            strokes: { thinnestPx: stroke, spots: [] },
            gaps: { thinnestPx: gap, spots: [] },
          });
          for (const { code, severity, passesAtWidthUm } of artFindings(facts, [], { widthUm, cloths: [] })) {
            if (!sized.includes(code)) continue;
            if (passesAtWidthUm === null) throw new Error(`${code} passes at no width`);
            const there = artFindings(facts, [], { widthUm: passesAtWidthUm, cloths: [] });
            const again = there.find((finding) => finding.code === code);
            // What stopped at least no longer does; everything else is gone.
            expect(again?.severity === undefined || (severity === 'stops' && again.severity === 'notes')).toBe(true);
          }
        },
      ),
    );
  });

  // Common practice, no source: strokes from 0.5 mm, gaps from 0.7 mm.
  it('marks only the places that are too thin at this size', () => {
    const spot = (thicknessPx: number) => ({ x: thicknessPx, y: 0, width: 4, height: 4, thicknessPx });
    const strokes = { thinnestPx: 4, spots: [spot(4), spot(5), spot(9)] };
    const widthUm = 3_000 * 0.08 * UM_PER_MM;
    const [thin] = artFindings(cleanFacts({ strokes }), [], { widthUm, cloths: [] });
    expect(thin).toMatchObject({
      code: 'thinStrokes',
      numbers: { thinnestUm: 320, leastUm: 500 },
      spots: [{ thicknessPx: 4 }, { thicknessPx: 5 }],
      mends: ['thicken'],
    });
  });

  it('tells ink that vanishes by cloth, and offers one new colour only where there is one', () => {
    const near = '#223A66';
    expect(hexDifference('#1D3461', near)).toBeLessThan(10);
    const cloths = [WHITE, { name: 'Navy', hex: near }];
    const [one] = artFindings(cleanFacts(), [], at(8, cloths));
    expect(one).toMatchObject({
      code: 'vanishes',
      numbers: { cloths: [{ name: 'Navy', share: 1 }] },
      mends: ['recolour'],
    });
    const two = cleanFacts({
      colours: [
        { hex: '#F4C430', share: 0.7 },
        { hex: '#1D3461', share: 0.3 },
      ],
      oneColourHex: null,
    });
    expect(artFindings(two, [], at(8, cloths))[0]).toMatchObject({ code: 'vanishes', mends: [] });
  });

  it('tells a logo on a flat backing from a picture that is meant to be a rectangle', () => {
    const backing = { hex: '#FFFFFF', share: 0.6, rimShare: 1, enclosed: [] };
    expect(codes(cleanFacts({ backing }), ['noTransparency'], at(8, []))).toEqual(['whiteBox']);
    expect(codes(cleanFacts({ look: 'photograph' }), ['noTransparency'], at(8, []))).toEqual(['wholeRectangle']);
  });

  it('turns a print on the sheet before it says that it is too wide', () => {
    const { sheetWidthUm } = USUAL_PRESS_LIMITS;
    const limits = { ...USUAL_PRESS_LIMITS, platenUm: { widthUm: 9e6, heightUm: 9e6 } };
    const tall = cleanFacts({ detailShare: 1, inkBox: { x: 0, y: 0, width: 1_000, height: 2_000 } });
    expect(codes(tall, [], { widthUm: sheetWidthUm, cloths: [], limits })).not.toContain('tooLarge');
    expect(codes(tall, [], { widthUm: sheetWidthUm + 1, cloths: [], limits })).toContain('tooLarge');
  });

  it('tells what stops a revision first', () => {
    const facts = cleanFacts({ detailShare: 0.3, specks: { count: 2, spots: [] }, widthPx: 6_000 });
    expect(codes(facts, ['convertedFromCmyk'], at(10))).toEqual([
      'blurry',
      'specks',
      'enlarged',
      'colour',
      'emptyMargin',
    ]);
  });
});
