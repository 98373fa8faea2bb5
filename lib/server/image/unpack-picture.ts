import { readFile } from 'node:fs/promises';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import type { RasterMediaType } from './file-kind';
import { jpegStructure } from './jpeg-structure';
import { pngDataIsWhole, pngStructure } from './png-structure';
import { MOST_PIXELS, openPicture, type Pixels, toPixels } from './quiet-sharp';
import { isSrgbProfile } from './srgb-profile';

/** A sound picture, upright and in sRGB, with what was done to it on the way. */
export type UnpackedPicture =
  | { readonly ok: true; readonly pixels: Pixels; readonly notes: ArtNote[] }
  | { readonly ok: false; readonly reason: 'damaged' | 'tooManyPixels' };

/**
 * Unpacks an uploaded picture. Decoders accept much that is broken in a PNG or a JPEG, so the file's own structure is
 * walked first; of other kinds the decoder itself refuses one that is cut off. Its size is known before it is unpacked.
 */
export async function unpackPicture(path: string, mediaType: RasterMediaType): Promise<UnpackedPicture> {
  const structure = await structureOf(path, mediaType);
  if (!structure.ok) return structure;
  if (structure.widthPx * structure.heightPx > MOST_PIXELS) return { ok: false, reason: 'tooManyPixels' };
  if (mediaType === 'image/png' && !(await pngDataIsWhole(await readFile(path)))) {
    return { ok: false, reason: 'damaged' };
  }
  const unpacked = await unpack(path);
  if (!unpacked) return { ok: false, reason: 'damaged' };
  const { pixels, notes } = unpacked;
  if (structure.frames === 'one') return { ok: true, pixels, notes };
  return { ok: true, pixels, notes: [...notes, structure.frames === 'moving' ? 'firstFrameOnly' : 'firstPageOnly'] };
}

type Structure =
  | {
      readonly ok: true;
      readonly widthPx: number;
      readonly heightPx: number;
      readonly frames: 'one' | 'moving' | 'pages';
    }
  | { readonly ok: false; readonly reason: 'damaged' };

async function structureOf(path: string, mediaType: RasterMediaType): Promise<Structure> {
  if (mediaType === 'image/png') {
    const png = pngStructure(await readFile(path));
    return png.ok ? { ...png, frames: png.animated ? 'moving' : 'one' } : png;
  }
  if (mediaType === 'image/jpeg') {
    const jpeg = jpegStructure(await readFile(path));
    return jpeg.ok ? { ...jpeg, frames: 'one' } : jpeg;
  }
  try {
    const { width, height, pages = 1 } = await openPicture(path, { limitInputPixels: false }).metadata();
    const several = mediaType === 'image/tiff' ? 'pages' : 'moving';
    return { ok: true, widthPx: width, heightPx: height, frames: pages > 1 ? several : 'one' };
  } catch {
    return { ok: false, reason: 'damaged' };
  }
}

async function unpack(path: string): Promise<{ pixels: Pixels; notes: ArtNote[] } | null> {
  try {
    const { orientation, space, icc } = await openPicture(path).metadata();
    const isSrgb = icc !== undefined && isSrgbProfile(icc);
    const notes: ArtNote[] = [];
    if (space === 'cmyk') notes.push('convertedFromCmyk');
    else if (icc && !isSrgb) notes.push('convertedToSrgb');
    if (orientation !== undefined && orientation !== 1) notes.push('turnedUpright');
    return { pixels: await toPixels(openPicture(path, { ignoreIcc: isSrgb }).autoOrient()), notes };
  } catch {
    return null;
  }
}
