import { execFileSync, spawnSync } from 'node:child_process';
import { join } from 'node:path';
import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import type { TextRun } from '@/lib/domain/lettering/shaping/shaping-font';
import { readPackagedFont } from '@/lib/server/text/font-file';
import { openFont } from '@/lib/server/text/open-font';
import { loadOutliner, loadTypeface, MissingGlyph } from '@/lib/server/text/outline-text';

const FONTS = [
  '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf',
  '@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf',
] as const;

const hasShaper = spawnSync('hb-shape', ['--version']).status === 0;
if (!hasShaper) console.log('skipped: hb-shape (Debian: libharfbuzz-bin) is not installed, shaping is not compared');

/** A word in Latin letters as one run. */
function wholeRun(text: string): TextRun {
  return { text, start: 0, end: text.length, rightToLeft: false, script: null };
}

const outline = await loadOutliner();
const at = { x: 0, y: 0 };

/** Height of drawn outlines above and below the baseline, mm. */
function extent(d: string): { top: number; bottom: number; left: number; right: number } {
  const path = new svgPathProperties(d);
  const length = path.getTotalLength();
  const points = Array.from({ length: 801 }, (_, index) => path.getPointAtLength((length * index) / 800));
  return {
    top: Math.min(...points.map(({ y }) => y)),
    bottom: Math.max(...points.map(({ y }) => y)),
    left: Math.min(...points.map(({ x }) => x)),
    right: Math.max(...points.map(({ x }) => x)),
  };
}

describe('setting text', () => {
  it.each(['H', 'E', 'T', 'I'])('makes a flat capital %s as tall as was asked, standing on the baseline', (letter) => {
    const { top, bottom } = extent(outline(letter, 50, at).d);
    expect(bottom).toBeCloseTo(0, 2);
    expect(-top).toBeCloseTo(50, 1);
  });

  it('makes a capital of a fallback font as tall as one of the first', () => {
    const { top, bottom } = extent(outline('Ж', 50, at).d);
    expect(bottom).toBeCloseTo(0, 2);
    expect(-top).toBeCloseTo(50, 1);
  });

  it('begins where it is told and grows with the height', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 300, noNaN: true }), (capHeight) => {
        const { widthMm } = outline('3 1/2 in', capHeight, at);
        expect(widthMm / outline('3 1/2 in', 1, at).widthMm).toBeCloseTo(capHeight, 6);
      }),
    );
    const moved = extent(outline('H', 10, { x: 100, y: 200 }).d);
    const there = extent(outline('H', 10, at).d);
    expect([moved.left - there.left, moved.bottom]).toEqual([expect.closeTo(100, 2), expect.closeTo(200, 2)]);
  });

  it('sets a word in two scripts, each letter in a font that has it', () => {
    const word = outline('Łukasz Ωmega', 20, at);
    expect(word.widthMm).toBeGreaterThan(outline('Łukasz mega', 20, at).widthMm);
  });

  it('names the letter that no font has', () => {
    expect(() => outline('Rev 1 漢', 20, at)).toThrow(MissingGlyph);
    expect(() => outline('Rev 1 漢', 20, at)).toThrow(/"漢" \(U\+6F22\)/);
  });

  it('can leave out the letters that no font has', async () => {
    const { drawable, outline: set } = await loadTypeface('regular');
    expect(drawable('Relay 🚣 Nguyễn')).toBe('Relay  Nguyễn');
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(() => set(drawable(text), 10, at)).not.toThrow();
      }),
    );
  });

  it('draws nothing for nothing', () => {
    expect(outline('', 20, at)).toEqual({ d: '', widthMm: 0 });
    expect(outline(' ', 20, at).d).toBe('');
  });
});

describe.runIf(hasShaper)('shaping', () => {
  // Source: hb-shape, the HarfBuzz project's own program (Debian libharfbuzz-bin).
  function shapedByHarfBuzz(font: string, text: string): [number, number][] {
    const codePoints = Array.from(text, (letter) => letter.codePointAt(0)?.toString(16)).join(',');
    const said = execFileSync(
      'hb-shape',
      [
        '--no-glyph-names',
        '--no-clusters',
        '--output-format=json',
        `--unicodes=${codePoints}`,
        join('node_modules', font),
      ],
      { encoding: 'utf8' },
    );
    return (JSON.parse(said) as { g: number; ax: number }[]).map(({ g, ax }) => [g, ax]);
  }

  const words = [
    '3 1/2 in',
    '12.7 cm',
    'Rev 2',
    'AVATAR To',
    'Zoë O’Brien-Łuczak',
    'fi ffl',
    'Nguyễn',
    '007',
    'Å A\u030a',
  ];

  it.each(FONTS.flatMap((font) => words.map((word) => [word, font] as const)))('of "%s" agrees in %s', (word, font) => {
    const ours = openFont(readPackagedFont(font)).shape(wholeRun(word));
    expect(ours.map(({ glyphId, xAdvance }) => [glyphId, xAdvance])).toEqual(shapedByHarfBuzz(font, word));
  });

  it('agrees for any words in Latin letters', () => {
    const [font] = FONTS;
    const ours = openFont(readPackagedFont(font));
    const letters = fc.constantFrom(...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 .,-/’äéîõůßŁ');
    fc.assert(
      fc.property(fc.array(letters, { minLength: 1, maxLength: 24 }), (all) => {
        const word = all.join('');
        expect(ours.shape(wholeRun(word)).map(({ glyphId, xAdvance }) => [glyphId, xAdvance])).toEqual(
          shapedByHarfBuzz(font, word),
        );
      }),
      { numRuns: 40 },
    );
  });
});
