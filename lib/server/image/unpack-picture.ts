import { readFile } from 'node:fs/promises';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import type { ArtMediaType } from './file-kind';
import { jpegStructure } from './jpeg-structure';
import { pngDataIsWhole, pngStructure } from './png-structure';
import { MOST_PIXELS, openPicture, type Pixels, toPixels } from './quiet-sharp';

/** A sound picture, upright and in sRGB, with what was done to it on the way. */
export type UnpackedPicture =
  | { readonly ok: true; readonly pixels: Pixels; readonly notes: ArtNote[] }
  | { readonly ok: false; readonly reason: 'damaged' | 'tooManyPixels' };

/**
 * Unpacks an uploaded picture. Decoders accept much that is broken, so the file's own structure is walked first, and its
 * size is known before it is unpacked.
 */
export async function unpackPicture(path: string, mediaType: ArtMediaType): Promise<UnpackedPicture> {
  const bytes = await readFile(path);
  const structure = mediaType === 'image/png' ? pngStructure(bytes) : jpegStructure(bytes);
  if (!structure.ok) return structure;
  if (structure.widthPx * structure.heightPx > MOST_PIXELS) return { ok: false, reason: 'tooManyPixels' };
  if (mediaType === 'image/png' && !(await pngDataIsWhole(bytes))) return { ok: false, reason: 'damaged' };
  const unpacked = await unpack(path);
  if (!unpacked) return { ok: false, reason: 'damaged' };
  const animated = 'animated' in structure && structure.animated;
  const { pixels, notes } = unpacked;
  return { ok: true, pixels, notes: animated ? [...notes, 'firstFrameOnly'] : notes };
}

async function unpack(path: string): Promise<{ pixels: Pixels; notes: ArtNote[] } | null> {
  try {
    const { orientation, space, icc } = await openPicture(path).metadata();
    const notes: ArtNote[] = [];
    if (space === 'cmyk') notes.push('convertedFromCmyk');
    else if (icc && !isSrgbProfile(icc)) notes.push('convertedToSrgb');
    if (orientation !== undefined && orientation !== 1) notes.push('turnedUpright');
    const ignoreIcc = icc !== undefined && isSrgbProfile(icc);
    return { pixels: await toPixels(openPicture(path, { ignoreIcc }).autoOrient()), notes };
  } catch {
    return null;
  }
}

/** Whether a profile describes itself as sRGB, in either of the encodings its text may have (ICC.1, 9.2.41). */
function isSrgbProfile(icc: Uint8Array): boolean {
  return /s\0?R\0?G\0?B/.test(new TextDecoder('latin1').decode(icc));
}
