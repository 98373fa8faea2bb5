import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { beforeAll, describe, expect, it } from 'vitest';
import type { FontRef } from '@/lib/domain/lettering/lettering';
import type { SetLine, TypeEngine } from '@/lib/domain/lettering/type-engine';
import { offeredPackagedFonts, packagedFontsBehind, packagedLicence } from '@/lib/server/fonts/packaged-fonts';
import { loadTypeEngine } from '@/lib/server/text/load-type-engine';

const SHIPPED = [...offeredPackagedFonts(), ...packagedFontsBehind()].map(({ ref }) => ref);

let engine: TypeEngine;
beforeAll(async () => {
  engine = await loadTypeEngine(SHIPPED);
});

function shipped(family: string): FontRef {
  const ref = SHIPPED.find((each) => each.family === family);
  if (!ref) throw new Error(`no ${family}`);
  return ref;
}

/** Extent of the drawn outlines as an independent path library measures it. */
function measured({ letters }: SetLine) {
  const d = letters
    .flatMap(({ outline, x }) =>
      outline.map(({ type, values }) => `${type}${values.map((v, i) => (i % 2 === 0 ? v + x : v)).join(' ')}`),
    )
    .join('');
  const path = new svgPathProperties(d);
  const length = path.getTotalLength();
  const points = Array.from({ length: 3_001 }, (_, index) => path.getPointAtLength((length * index) / 3_000));
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
}

describe('a shipped font', () => {
  it.each(SHIPPED)('$family $style draws an H as tall as was asked', (ref) => {
    const { minY, maxY } = measured(engine.outlineLine('H', ref));
    // A thousandth of a 10 in number is a quarter of a millimetre: 0.3 of one is within 0.1 mm.
    expect(Math.abs(maxY - minY - 1_000)).toBeLessThan(0.3);
  });

  it.each(SHIPPED)('$family $style has its licence beside it', ({ sha256 }) => {
    expect(packagedLicence(sha256)).toMatch(/SIL OPEN FONT LICENSE Version 1\.1/);
  });

  it.each(offeredPackagedFonts())('$family has every letter and figure of English', ({ ref }) => {
    const line = engine.outlineLine('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 -.&’#', ref);
    expect([line.missing, line.borrowed]).toEqual([[], []]);
  });
});

describe('a set line', () => {
  it('has its letters from left to right, each where the one before ends', () => {
    const { letters, advance } = engine.outlineLine('AVATAR 07', shipped('Anton'));
    expect(letters.map(({ text }) => text).join('')).toBe('AVATAR 07');
    let x = 0;
    for (const letter of letters) {
      expect(letter.x).toBeCloseTo(x, 9);
      x += letter.advance;
    }
    expect(advance).toBeCloseTo(x, 9);
  });

  it('is kerned', () => {
    const font = shipped('Noto Sans');
    const apart = engine.outlineLine('A', font).advance + engine.outlineLine('V', font).advance;
    expect(engine.outlineLine('AV', font).advance).toBeLessThan(apart);
    expect(engine.outlineLine('AV', font, ['-kern']).advance).toBeCloseTo(apart, 9);
  });

  it('keeps an accent on its letter, written as one character or as two', () => {
    const font = shipped('Oswald');
    const [one, two] = [engine.outlineLine('É', font), engine.outlineLine('E\u0301', font)];
    expect(two.letters).toHaveLength(1);
    expect(two.letters[0]?.text).toBe('E\u0301');
    expect(two.inkBox?.minY).toBeLessThan(-1_100);
    expect(two.advance).toBeCloseTo(one.advance, 9);
  });

  it('has an ink box that holds the outlines as another library measures them', () => {
    for (const family of ['Pacifico', 'Lobster', 'Graduate', 'Noto Sans Arabic']) {
      const line = engine.outlineLine(family === 'Noto Sans Arabic' ? 'محمد' : 'Ågy & 08', shipped(family));
      const box = measured(line);
      for (const side of ['minX', 'maxX', 'minY', 'maxY'] as const) {
        expect(Math.abs(box[side] - (line.inkBox?.[side] ?? Number.NaN))).toBeLessThan(8);
      }
    }
  });

  it('runs right to left where its letters do, figures left to right', () => {
    const { letters } = engine.outlineLine('שרה 12', shipped('Rubik'));
    expect(letters.map(({ text }) => text).join('')).toBe('12 הרש');
  });

  it('tells which letters are joined to the one on their right', () => {
    // Dal and waw join nothing after them: Unicode, ArabicShaping.txt, Joining_Type R.
    const { letters } = engine.outlineLine('داود محمد', shipped('Noto Sans Arabic'));
    const joins = letters.map(({ text, joinsNext }) => `${text}${joinsNext ? '-' : ''}`).join('');
    expect(joins).toBe('د-م-ح-م دواد');
  });

  it('takes a whole word from the font behind, and says so', () => {
    const line = engine.outlineLine('Nguyễn 7', shipped('Archivo Black'));
    expect(line.borrowed.map(({ text, font }) => [text, font.family])).toEqual([['Nguyễn', 'Noto Sans']]);
    expect(line.missing).toEqual([]);
  });

  it('names every character that no font has, once, and draws nothing for it', () => {
    const line = engine.outlineLine('漢 A🚣漢\n', shipped('Anton'));
    expect(line.missing).toEqual(['漢', '🚣', '\n']);
    expect(line.letters.filter(({ outline }) => outline.length > 0).map(({ text }) => text)).toEqual(['A']);
  });

  it('comes of any text at all, with nothing drawn in the shape of a box', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 12 }), (text) => {
        const { letters, missing } = engine.outlineLine(text, shipped('Bitter'));
        expect(letters.every(({ x, advance }) => Number.isFinite(x) && Number.isFinite(advance))).toBe(true);
        expect(missing.every((each) => text.includes(each))).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('is refused in a font that was not loaded', () => {
    const stranger = { sha256: '0'.repeat(64), family: 'Stranger', style: 'Regular' };
    expect(engine.has(stranger)).toBe(false);
    expect(() => engine.outlineLine('A', stranger)).toThrow(/Stranger/);
  });
});
