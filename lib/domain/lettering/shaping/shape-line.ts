import { inVisualOrder } from './bidi-levels';
import { graphemes } from './graphemes';
import { MISSING_GLYPH_ID, type ShapedGlyph, type ShapingFont } from './shaping-font';
import { type LevelledRun, textRuns } from './text-runs';

/** Text shaped in one font, its glyphs from left to right as they are seen. */
export type ShapedRun<Font extends ShapingFont> = LevelledRun & {
  readonly font: Font;
  readonly glyphs: readonly ShapedGlyph[];
};

export type ShapedLine<Font extends ShapingFont> = {
  /** From left to right as they are seen. */
  readonly runs: readonly ShapedRun<Font>[];
  /** Letters that no font has, each once, in the order they are written. */
  readonly missing: readonly string[];
};

/**
 * Shapes one line in the first of the fonts, what it lacks in those behind it: a whole word at a time, so that one accent
 * does not change the look of a single letter, and letter by letter only where no font has all of a word. No font has a
 * line break.
 */
export function shapeLine<Font extends ShapingFont>(
  text: string,
  fonts: readonly Font[],
  features: readonly string[] = [],
): ShapedLine<Font> {
  const missing = new Set<string>();
  const runs = textRuns(text).flatMap((run) => fontRuns(run, fonts, missing));
  return {
    runs: inVisualOrder(runs).map((run) => {
      const glyphs = run.font.shape(run, features);
      for (const { cluster } of glyphs.filter(({ glyphId }) => glyphId === MISSING_GLYPH_ID)) {
        missing.add(letterAt(text, cluster));
      }
      return { ...run, glyphs: glyphs.filter(({ glyphId }) => glyphId !== MISSING_GLYPH_ID) };
    }),
    missing: [...missing],
  };
}

/** The first font that has all of the text; null where none has. */
export function fontHaving<Font extends ShapingFont>(text: string, fonts: readonly Font[]): Font | null {
  return fonts.find((font) => font.hasAll(text)) ?? null;
}

type FontRun<Font extends ShapingFont> = LevelledRun & { readonly font: Font };

/** A run cut where the font must change. Letters that no font has are left out and named in `missing`. */
function fontRuns<Font extends ShapingFont>(
  run: LevelledRun,
  fonts: readonly Font[],
  missing: Set<string>,
): FontRun<Font>[] {
  const cut: FontRun<Font>[] = [];
  let at = run.start;
  const take = (piece: string, font: Font | null) => {
    const start = at;
    at += piece.length;
    const last = cut.at(-1);
    if (!font) missing.add(piece);
    else if (last?.font === font && last.end === start) cut[cut.length - 1] = { ...last, end: at };
    else cut.push({ ...run, start, end: at, font });
  };
  for (const word of words(run.text.slice(run.start, run.end))) {
    const last = cut.at(-1)?.font;
    const font = isSpace(word) && last?.hasAll(word) ? last : fontHaving(word, fonts);
    if (font) take(word, font);
    else for (const letter of graphemes(word)) take(letter, fontHaving(letter, fonts));
  }
  return cut;
}

/** Words and the spaces between them, in order. */
function words(text: string): string[] {
  return text.split(/(\s+)/u).filter((piece) => piece !== '');
}

function isSpace(text: string): boolean {
  return text.trim() === '';
}

function letterAt(text: string, index: number): string {
  return graphemes(text.slice(index))[0] ?? '';
}
