import { describe, expect, it } from 'vitest';
import { FINDING_CODES } from '@/lib/domain/art/findings/art-finding';
import { artFindings } from '@/lib/domain/art/findings/art-findings';
import { umFromInches, umFromMm } from '@/lib/domain/measure/length';
import { artFindingWords } from '@/lib/messages/art-finding-words';
import { translatorFor } from '@/lib/messages/translator';
import { cleanFacts } from '../art/facts-sample';

const t = translatorFor('en', 'art-findings');

/** A picture with everything the matter with it that can be at once. */
const worst = cleanFacts({
  widthPx: 6_000,
  inkBox: { x: 0, y: 0, width: 3_000, height: 3_000 },
  junk: [{ x: 0, y: 0, width: 9, height: 9 }],
  haze: { share: 0.04, reachPx: 30, spots: [] },
  detailShare: 0.256,
  specks: { count: 3, spots: [] },
  strokes: { thinnestPx: 2.4, spots: [] },
  gaps: { thinnestPx: 2, spots: [] },
});
const place = { widthUm: umFromInches(24), unit: 'in' as const };
const cloths = [
  { name: 'Navy', hex: '#1D3461' },
  { name: 'Dusk', hex: '#223A66' },
];

function everyFinding() {
  const boxed = { ...worst, backing: { hex: '#FDFDFC', share: 0.62, rimShare: 1, enclosed: [] } };
  const found = [
    ...artFindings(worst, ['noTransparency', 'convertedFromCmyk'], { ...place, cloths }),
    ...artFindings(boxed, [], { widthUm: umFromMm(100), cloths }),
  ];
  return FINDING_CODES.map((code) => {
    const finding = found.find((each) => each.code === code);
    if (!finding) throw new Error(`no ${code}`);
    return finding;
  });
}

describe('the words of a finding', () => {
  it.each(everyFinding())('says one sentence about $code to the maker and one to the customer', (finding) => {
    const { title, maker, customer, number } = artFindingWords(t, finding, place);
    for (const sentence of [maker, customer]) expect(sentence).toMatch(/^[A-Z0-9][^.]*(?:\d\.\d[^.]*)*\.$/);
    expect(title).not.toMatch(/[.]$/);
    expect(number).not.toBe('');
    // Words of the trade and of computers that a customer need not know.
    expect(customer).not.toMatch(
      /\b(px|pixels?|dpi|ink|backing|transfer|alpha|CMYK|sRGB|art|platen|sheet|halftone)\b/i,
    );
  });

  it('says what a soft print does and how wide it may be', () => {
    const [blurry] = artFindings(cleanFacts({ detailShare: 0.65 }), [], { widthUm: umFromInches(10), cloths: [] });
    if (!blurry) throw new Error('not soft');
    const words = artFindingWords(t, blurry, { widthUm: umFromInches(10), unit: 'in' });
    expect(words.maker).toBe(
      'At 10 in it prints soft, with fuzzy edges: print it 9 3/4 in wide at most, redraw it as flat colours, or ask for the original.',
    );
    expect(words.number).toBe('195 px an inch; 300 is sharp');
  });

  it('never rounds a width to one that would not pass', () => {
    const thin = cleanFacts({ strokes: { thinnestPx: 7.3, spots: [] } });
    const [finding] = artFindings(thin, [], { widthUm: umFromInches(8), cloths: [] });
    if (finding?.code !== 'thinStrokes') throw new Error('not thin');
    expect(finding.passesAtWidthUm).toBeGreaterThan(umFromInches(8));
    expect(artFindingWords(t, finding, { widthUm: umFromInches(8), unit: 'in' }).maker).toContain(
      '8 1/8 in wide or more',
    );
    expect(artFindingWords(t, finding, { widthUm: umFromInches(8), unit: 'cm' }).number).toBe(
      '0.49 mm where 0.5 mm holds',
    );
  });
});
