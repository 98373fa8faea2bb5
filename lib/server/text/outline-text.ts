import type { OutlineText } from '@/lib/domain/layout/tape';
import { graphemes } from '@/lib/domain/lettering/shaping/graphemes';
import { fontHaving, type ShapedRun, shapeLine } from '@/lib/domain/lettering/shaping/shape-line';
import type { ShapedGlyph, ShapingFont } from '@/lib/domain/lettering/shaping/shaping-font';
import { readPackagedFont } from './font-file';

/** Thrown where no font of the chain has a glyph: a box in its place would be printed. */
export class MissingGlyph extends Error {
  override readonly name = 'MissingGlyph';

  constructor(
    /** What is missing: one letter as people count them. */
    readonly character: string,
    readonly text: string,
  ) {
    super(`No font has a glyph for "${character}" (${codePoints(character)}) in "${text}".`);
  }
}

export type Weight = 'regular' | 'bold';

/** Fonts in one weight, tried in order for every letter. */
export type Typeface = {
  /** Words of one line to outlines. Throws `MissingGlyph`. */
  readonly outline: OutlineText;
  /** The text without the letters that no font has. */
  readonly drawable: (text: string) => string;
};

const FONT_CHAINS: Record<Weight, readonly string[]> = {
  regular: [
    '@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf',
    '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf',
  ],
  bold: [
    '@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf',
    '@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf',
  ],
};

const loaded = new Map<Weight, Promise<Typeface>>();

/** The shop's own typeface in one weight, opened once a process. */
export function loadTypeface(weight: Weight): Promise<Typeface> {
  const known = loaded.get(weight) ?? openTypeface(FONT_CHAINS[weight]);
  loaded.set(weight, known);
  return known;
}

/** What turns the words on tapes into outlines. */
export async function loadOutliner(): Promise<OutlineText> {
  return (await loadTypeface('bold')).outline;
}

async function openTypeface(paths: readonly string[]): Promise<Typeface> {
  const { openFont } = await import('./open-font');
  const fonts = paths.map((path) => openFont(readPackagedFont(path)));
  return {
    outline: (text, capHeightMm, at) => {
      const { runs, missing } = shapeLine(text, fonts);
      const [lacking] = missing;
      if (lacking !== undefined) throw new MissingGlyph(lacking, text);
      let x = at.x;
      let d = '';
      for (const run of runs) {
        const set = outlineRun(run, capHeightMm / run.font.capHeight, { x, y: at.y });
        x = set.endX;
        d += set.d;
      }
      return { d, widthMm: x - at.x };
    },
    drawable: (text) =>
      graphemes(text)
        .filter((letter) => fontHaving(letter, fonts) !== null)
        .join(''),
  };
}

function outlineRun(
  { font, glyphs }: ShapedRun<ShapingFont>,
  mmPerUnit: number,
  at: { x: number; y: number },
): { d: string; endX: number } {
  let x = at.x;
  let d = '';
  for (const glyph of glyphs) {
    d += glyphData(font, glyph, mmPerUnit, { x, y: at.y });
    x += glyph.xAdvance * mmPerUnit;
  }
  return { d, endX: x };
}

function glyphData(font: ShapingFont, glyph: ShapedGlyph, mmPerUnit: number, pen: { x: number; y: number }): string {
  const place = (value: number, index: number) =>
    index % 2 === 0
      ? thousandth(pen.x + (glyph.xOffset + value) * mmPerUnit)
      : thousandth(pen.y - (glyph.yOffset + value) * mmPerUnit);
  return font
    .outline(glyph.glyphId)
    .map(({ type, values }) => `${type}${values.map(place).join(' ')}`)
    .join('');
}

function thousandth(mm: number): string {
  return String(Math.round(mm * 1000) / 1000 + 0);
}

function codePoints(text: string): string {
  return Array.from(
    text,
    (letter) => `U+${(letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`,
  ).join(' ');
}
