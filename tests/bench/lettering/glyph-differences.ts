import type { ShapedGlyph } from '@/lib/domain/lettering/shaping/shaping-font';
import type { ReferenceGlyph } from './hb-shape';

/** How far glyphs are from the reference: as many as are others or missing, and the worst distance in font units. */
export type Differences = { readonly glyphs: number; readonly worstUnits: number };

export function glyphDifferences(ours: readonly ShapedGlyph[], theirs: readonly ReferenceGlyph[]): Differences {
  const count = Math.max(ours.length, theirs.length);
  let glyphs = 0;
  let worstUnits = 0;
  for (let index = 0; index < count; index += 1) {
    const [own, their] = [ours[index], theirs[index]];
    if (!own || !their || own.glyphId !== their.g) {
      glyphs += 1;
      continue;
    }
    worstUnits = Math.max(
      worstUnits,
      Math.abs(own.xAdvance - their.ax),
      Math.abs(own.xOffset - their.dx),
      Math.abs(own.yOffset - their.dy),
    );
  }
  return { glyphs, worstUnits };
}

export function worseOf(one: Differences, other: Differences): Differences {
  return { glyphs: one.glyphs + other.glyphs, worstUnits: Math.max(one.worstUnits, other.worstUnits) };
}
