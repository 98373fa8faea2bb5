import type { OutlineStep } from '../type-engine';
import { measuredCapHeight } from './cap-height';
import type { HarfBuzz, HarfBuzzBuffer, HarfBuzzGlyph } from './harfbuzz';

/** One glyph of shaped text. Advances and offsets in font units, y up; `cluster` is where its characters begin in the text. */
export type ShapedGlyph = {
  readonly glyphId: number;
  readonly cluster: number;
  readonly xAdvance: number;
  readonly xOffset: number;
  readonly yOffset: number;
  /** True where a stroke runs from the letter before it, in the order of writing, into this one. */
  readonly joined: boolean;
};

/** A stretch of a text in one script and one direction. `start` and `end` count UTF-16 units of the whole text. */
export type TextRun = {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly rightToLeft: boolean;
  /** ISO 15924 code; null lets HarfBuzz find out. */
  readonly script: string | null;
};

/** A whole TrueType or OpenType font, ready to shape text and hand out outlines. */
export type ShapingFont = {
  /** Height of a flat capital, font units: the trade's letter height is measured on it. */
  readonly capHeight: number;
  /** The glyphs of a run in the order they are seen, left to right; the text around it decides how letters join. */
  readonly shape: (run: TextRun, features?: readonly string[]) => readonly ShapedGlyph[];
  /** Whether the font draws every character of the text. */
  readonly hasAll: (text: string) => boolean;
  /** A glyph's outline in font units, y up. */
  readonly outline: (glyphId: number) => readonly OutlineStep[];
};

/** Glyph 0 stands for every character a font lacks (OpenType 1.9, "glyph 0"). */
export const MISSING_GLYPH_ID = 0;

/** As many words as a font remembers having or lacking, before it begins anew. */
const MOST_KNOWN_WORDS = 10_000;

/** Not a language but the want of one (BCP 47): what a name's letters look like may not depend on where they are drawn. */
const NO_LANGUAGE = 'und';

/** Opens a font's bytes, which must be a whole TTF or OTF. Throws where the font has no capital to measure a height on. */
export function openShapingFont(harfbuzz: HarfBuzz, bytes: Uint8Array): ShapingFont {
  const face = new harfbuzz.Face(new harfbuzz.Blob(bytes));
  const font = new harfbuzz.Font(face);
  const outlines = new Map<number, readonly OutlineStep[]>();
  const known = new Map<string, boolean>();

  const shaped = (prepare: (buffer: HarfBuzzBuffer) => void, features: readonly string[]): HarfBuzzGlyph[] => {
    const buffer = new harfbuzz.Buffer();
    prepare(buffer);
    buffer.setLanguage(NO_LANGUAGE);
    buffer.setFlags(harfbuzz.BufferFlag.PRODUCE_SAFE_TO_INSERT_TATWEEL);
    buffer.guessSegmentProperties();
    harfbuzz.shape(
      font,
      buffer,
      features.map((text) => featureOf(harfbuzz, text)),
    );
    return buffer.getGlyphInfosAndPositions();
  };

  const outline = (glyphId: number) => {
    const steps = outlines.get(glyphId) ?? font.glyphToJson(glyphId).map(outlineStep);
    outlines.set(glyphId, steps);
    return steps;
  };

  return {
    capHeight: measuredCapHeight({
      outlineOf: (letter) => {
        const glyphId = font.nominalGlyph(letter.codePointAt(0) ?? 0);
        return glyphId ? outline(glyphId) : null;
      },
      os2: face.referenceTable('OS/2'),
    }),
    shape: ({ text, start, end, rightToLeft, script }, features = []) =>
      shaped((buffer) => {
        buffer.addText(text, start, end - start);
        buffer.setDirection(rightToLeft ? harfbuzz.Direction.RTL : harfbuzz.Direction.LTR);
        if (script) buffer.setScript(script);
      }, features).map(({ codepoint, cluster, flags, xAdvance = 0, xOffset = 0, yOffset = 0 }) => ({
        glyphId: codepoint,
        cluster,
        xAdvance,
        xOffset,
        yOffset,
        joined: (flags & harfbuzz.GlyphFlag.SAFE_TO_INSERT_TATWEEL) !== 0,
      })),
    hasAll: (text) => {
      const has =
        known.get(text) ??
        // Letters that the font maps one by one need no shaping to be found; others may come of their parts.
        (Array.from(text).every((character) => font.nominalGlyph(character.codePointAt(0) ?? 0)) ||
          shaped((buffer) => buffer.addText(text), []).every(({ codepoint }) => codepoint !== MISSING_GLYPH_ID));
      if (known.size >= MOST_KNOWN_WORDS) known.clear();
      known.set(text, has);
      return has;
    },
    outline,
  };
}

function featureOf(harfbuzz: HarfBuzz, text: string) {
  const feature = harfbuzz.Feature.fromString(text);
  if (!feature) throw new Error(`"${text}" switches no feature of a font.`);
  return feature;
}

function outlineStep({ type, values }: { type: string; values: number[] }): OutlineStep {
  if (type === 'M' || type === 'L' || type === 'Q' || type === 'C' || type === 'Z') return { type, values };
  throw new Error(`An outline has a step ${type}.`);
}
