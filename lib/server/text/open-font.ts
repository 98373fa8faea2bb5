import * as harfbuzz from 'harfbuzzjs';
import { openShapingFont, type ShapingFont } from '@/lib/domain/lettering/shaping/shaping-font';

/** Opens a font's bytes on the server. Throws where there is no letter in it to measure a height on. */
export function openFont(bytes: Uint8Array): ShapingFont {
  return openShapingFont(harfbuzz, bytes);
}
