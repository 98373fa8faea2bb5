import { svgPathProperties } from 'svg-path-properties';
import { shapeLine } from '@/lib/domain/lettering/shaping/shape-line';
import type { SetLine } from '@/lib/domain/lettering/type-engine';
import { offeredPackagedFonts, type PackagedFont, packagedFontsBehind } from '@/lib/server/fonts/packaged-fonts';
import { loadTypeEngine } from '@/lib/server/text/load-type-engine';
import { openFont } from '@/lib/server/text/open-font';
import { characterCases, classCases, hasBidiTests, isAsExpected } from './lettering/bidi-lines';
import { type Differences, glyphDifferences, worseOf } from './lettering/glyph-differences';
import { hasHarfBuzzProgram, shapedByHarfBuzz } from './lettering/hb-shape';
import { MIXED_LINES, NAMES_IN_ONE_SCRIPT } from './lettering/names';
import { printResult } from './measure';

// Glyphs and advances against hb-shape over the same font files; the order of mixed lines against the Unicode Character
// Database; and the height of a drawn H against the height asked.

if (!hasHarfBuzzProgram) throw new Error('hb-shape is not installed (Debian: libharfbuzz-bin).');
if (!hasBidiTests)
  throw new Error('The tests of the Unicode Character Database are not installed (Debian: unicode-data).');

/** A back number of 10 in, the tallest letters there are. */
const TALL_MM = 254;

const NONE: Differences = { glyphs: 0, worstUnits: 0 };
const fonts = [...offeredPackagedFonts(), ...packagedFontsBehind()];
const opened = fonts.map((font) => ({ ...font, ...openFont(font.bytes) }));
const behind = opened.slice(-packagedFontsBehind().length);
let linesShaped = 0;

/** Whole lines in one script, which hb-shape sets by itself, in every font that has all of them. */
function wholeLines(): Differences {
  return opened.reduce((sum, font) => {
    const names = NAMES_IN_ONE_SCRIPT.filter((name) => font.hasAll(name));
    const expected = shapedByHarfBuzz(names, { fontPath: font.path });
    return names.reduce((all, name, index) => {
      const glyphs = shapeLine(name, [font]).runs.flatMap((run) => run.glyphs);
      linesShaped += 1;
      return worseOf(all, reported(glyphDifferences(glyphs, expected[index] ?? []), `${font.family}: ${name}`));
    }, sum);
  }, NONE);
}

/** Mixed lines run by run: which letters stand where is for the bidi cases to say. */
function mixedLines(): Differences {
  return MIXED_LINES.reduce((sum, text) => {
    const { runs } = shapeLine(text, [opened[0] ?? neverEmpty(), ...behind]);
    linesShaped += 1;
    return runs.reduce((all, { start, end, rightToLeft, script, font, glyphs }) => {
      const [expected = []] = shapedByHarfBuzz([text.slice(start, end)], {
        fontPath: font.path,
        direction: rightToLeft ? 'rtl' : 'ltr',
        script: script ?? undefined,
        before: text.slice(0, start),
        after: text.slice(end),
      });
      return worseOf(all, reported(glyphDifferences(glyphs, expected), `${font.family}: ${text} ${start}–${end}`));
    }, sum);
  }, NONE);
}

function reported(differences: Differences, what: string): Differences {
  if (differences.glyphs > 0 || differences.worstUnits > 0) console.error(what, differences);
  return differences;
}

function neverEmpty(): never {
  throw new Error('no font');
}

/** The worst difference between a drawn H and the height asked, mm. */
async function worstCapHeightMm(): Promise<number> {
  const engine = await loadTypeEngine(fonts.map(({ ref }) => ref));
  return Math.max(...fonts.map(({ ref }) => Math.abs(heightMm(engine.outlineLine('H', ref)) - TALL_MM)));
}

function heightMm({ letters: [letter] }: SetLine): number {
  const mmPerUnit = TALL_MM / 1000;
  const d = (letter?.outline ?? [])
    .map(({ type, values }) => `${type}${values.map((value) => value * mmPerUnit).join(' ')}`)
    .join('');
  const path = new svgPathProperties(d);
  const length = path.getTotalLength();
  const ys = Array.from({ length: 4_001 }, (_, index) => path.getPointAtLength((length * index) / 4_000).y);
  return Math.max(...ys) - Math.min(...ys);
}

const glyphs = worseOf(wholeLines(), mixedLines());
const cases = [...characterCases(), ...classCases()];
const wrong = cases.filter((each) => !isAsExpected(each));
for (const { text, base } of wrong.slice(0, 20)) console.error('order', base, JSON.stringify(text));

printResult('lettering', {
  glyph_differences: glyphs.glyphs,
  worst_units: glyphs.worstUnits,
  lines: linesShaped,
  fonts: new Set(fonts.map(({ path }: PackagedFont) => path)).size,
  bidi_cases: cases.length,
  bidi_differences: wrong.length,
  cap_height_worst_mm: await worstCapHeightMm(),
});
