import { Blob, Buffer, Face, Font, shape } from 'harfbuzzjs';

/** One glyph of shaped text, in the order it is set. Advances and offsets in font units, y up. */
export type ShapedGlyph = {
  readonly glyphId: number;
  readonly xAdvance: number;
  readonly xOffset: number;
  readonly yOffset: number;
};

/** One step of a glyph's outline in font units, y up; TrueType outlines use M, L, Q and Z. */
export type OutlineStep = { readonly type: string; readonly values: readonly number[] };

/** A whole TrueType or OpenType font, ready to shape text and hand out outlines. */
export type OpenFont = {
  /** Height of a flat capital above the baseline, font units: the trade's letter height is measured on it. */
  readonly capHeight: number;
  readonly shape: (text: string) => ShapedGlyph[];
  readonly outline: (glyphId: number) => readonly OutlineStep[];
};

/** Offset of sCapHeight in the OS/2 table, version 2 and later (OpenType 1.9, OS/2 table). */
const CAP_HEIGHT_OFFSET = 88;

/** Opens a font's bytes. Throws where they do not state a cap height: lettering could not be set to a height. */
export function openFont(bytes: Uint8Array): OpenFont {
  const face = new Face(new Blob(bytes));
  const font = new Font(face);
  const outlines = new Map<number, readonly OutlineStep[]>();
  return {
    capHeight: capHeightOf(face),
    shape: (text) => {
      const buffer = new Buffer();
      buffer.addText(text);
      buffer.guessSegmentProperties();
      shape(font, buffer);
      return buffer.getGlyphInfosAndPositions().map((glyph) => ({
        glyphId: glyph.codepoint,
        xAdvance: glyph.xAdvance ?? 0,
        xOffset: glyph.xOffset ?? 0,
        yOffset: glyph.yOffset ?? 0,
      }));
    },
    outline: (glyphId) => {
      const known = outlines.get(glyphId) ?? font.glyphToJson(glyphId);
      outlines.set(glyphId, known);
      return known;
    },
  };
}

function capHeightOf(face: Face): number {
  const table = face.referenceTable('OS/2');
  const view = table && new DataView(table.buffer, table.byteOffset, table.byteLength);
  const capHeight = view && view.byteLength > CAP_HEIGHT_OFFSET + 1 ? view.getInt16(CAP_HEIGHT_OFFSET) : 0;
  if (capHeight <= 0) throw new Error(`The font states no cap height (OS/2 holds ${table?.byteLength ?? 0} bytes).`);
  return capHeight;
}
