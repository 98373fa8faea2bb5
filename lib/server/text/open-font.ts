import * as harfbuzz from 'harfbuzzjs';
import { openShapingFont, type ShapingFont } from '@/lib/domain/lettering/shaping/shaping-font';

/** Opens a font's bytes on the server. Throws where there is no letter in it to measure a height on. */
export function openFont(bytes: Uint8Array): ShapingFont {
  return openShapingFont(harfbuzz, bytes);
}

/** Every character that the font maps to a glyph. */
export function charactersOf(bytes: Uint8Array): string[] {
  const face = new harfbuzz.Face(new harfbuzz.Blob(bytes));
  return Array.from(face.collectUnicodes(), (codePoint) => String.fromCodePoint(codePoint));
}
