import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import { type CleanSvg, cleanSvg, svgText } from './clean-svg';
import { MOST_PIXELS, type Pixels, toPixels } from './quiet-sharp';
import { canBeDrawn } from './svg-cost';
import { svgSize } from './svg-size';
import { readSvgTree } from './svg-tree';
import { xmlText } from './xml-text';

export type UnpackedSvg =
  | { readonly ok: true; readonly pixels: Pixels; readonly notes: ArtNote[] }
  | {
      readonly ok: false;
      readonly reason: 'damaged' | 'tooInvolved' | 'onlyText' | 'onlyLinked' | 'nothingToPrint' | 'tookTooLong';
    };

/** How long one drawing may take before it is given up. */
const DRAW_LIMIT_SECONDS = 40;

/**
 * Draws an SVG once, large. It is taken apart and put together anew from the list of what is drawn, then drawn from memory:
 * a renderer that is given no address to start from finds no file beside it, and this one opens no network.
 */
export async function unpackSvg(path: string): Promise<UnpackedSvg> {
  const tree = readSvgTree(xmlText(await readFile(path)));
  if (!tree.ok) return tree;
  const size = svgSize(tree.root);
  if (!size) return { ok: false, reason: 'damaged' };
  const cleaned = cleanSvg(tree.root);
  if (!canBeDrawn(cleaned) || !(await picturesAreSound(cleaned.pictures))) return { ok: false, reason: 'tooInvolved' };
  const drawn = await draw(svgText(cleaned.root, size));
  if (!drawn.ok) return drawn;
  return isClear(drawn.pixels) ? { ok: false, reason: whyClear(cleaned) } : { ...drawn, notes: [...cleaned.notes] };
}

async function draw(
  text: string,
): Promise<{ ok: true; pixels: Pixels } | { ok: false; reason: 'damaged' | 'tookTooLong' }> {
  try {
    const drawing = sharp(Buffer.from(text), { limitInputPixels: MOST_PIXELS, failOn: 'warning', unlimited: false });
    return { ok: true, pixels: await toPixels(drawing.timeout({ seconds: DRAW_LIMIT_SECONDS })) };
  } catch (error) {
    const late = error instanceof Error && /timeout/i.test(error.message);
    return { ok: false, reason: late ? 'tookTooLong' : 'damaged' };
  }
}

/** Pictures inside a drawing are unpacked with it, so together they keep to the limit of one picture. */
async function picturesAreSound(pictures: readonly Uint8Array[]): Promise<boolean> {
  let pixels = 0;
  for (const picture of pictures) {
    const { width, height } = await sharp(picture)
      .metadata()
      .catch(() => ({ width: 0, height: 0 }));
    pixels += width * height;
    if (pixels > MOST_PIXELS) return false;
  }
  return true;
}

function isClear({ rgba }: Pixels): boolean {
  for (let at = 3; at < rgba.length; at += 4) if (rgba[at] !== 0) return false;
  return true;
}

/** What an empty drawing would have shown, had it been in the file. */
function whyClear({ notes }: CleanSvg): 'onlyText' | 'onlyLinked' | 'nothingToPrint' {
  if (notes.includes('textLeftOut')) return 'onlyText';
  return notes.includes('linkedPicturesLeftOut') ? 'onlyLinked' : 'nothingToPrint';
}
