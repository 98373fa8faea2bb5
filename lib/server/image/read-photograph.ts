import { writeFile } from 'node:fs/promises';
import type { RasterMediaType } from './file-kind';
import { openPixels, type Pixels } from './quiet-sharp';
import { unpackPicture } from './unpack-picture';

/** Longest side of a photograph as it is kept, px: twice as fine as the pictures it is shown in. */
export const PHOTOGRAPH_PX = 2400;
/** A photograph whose shorter side has fewer pixels shows a smudge, not cloth. */
export const LEAST_PHOTOGRAPH_PX = 500;

export type ReadPhotographRequest = {
  readonly path: string;
  readonly mediaType: RasterMediaType;
  /** Where the photograph is written as it is kept. */
  readonly picturePath: string;
};

export type ReadPhotograph =
  | { readonly ok: true; readonly widthPx: number; readonly heightPx: number }
  | { readonly ok: false; readonly reason: 'damaged' | 'tooManyPixels' | 'tooSmall' };

/**
 * Makes a photograph what is kept of it: upright, in sRGB, a JPEG no longer than `PHOTOGRAPH_PX`. It is packed anew from
 * its pixels alone, so that nothing of what the camera wrote beside them, such as where it was taken, is kept.
 */
export async function readPhotograph({ path, mediaType, picturePath }: ReadPhotographRequest): Promise<ReadPhotograph> {
  const unpacked = await unpackPicture(path, mediaType);
  if (!unpacked.ok) return unpacked;
  const { pixels } = unpacked;
  if (Math.min(pixels.widthPx, pixels.heightPx) < LEAST_PHOTOGRAPH_PX) return { ok: false, reason: 'tooSmall' };
  const { data, info } = await asKept(pixels).toBuffer({ resolveWithObject: true });
  await writeFile(picturePath, data);
  return { ok: true, widthPx: info.width, heightPx: info.height };
}

function asKept(pixels: Pixels) {
  return openPixels(pixels)
    .flatten({ background: '#FFFFFF' })
    .resize({ width: PHOTOGRAPH_PX, height: PHOTOGRAPH_PX, fit: 'inside', withoutEnlargement: true })
    .jpeg({ quality: 90, chromaSubsampling: '4:4:4' });
}
