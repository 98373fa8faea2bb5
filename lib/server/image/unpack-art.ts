import type { ArtNote } from '@/lib/domain/art/art-notes';
import { type ArtMediaType, isRaster } from './file-kind';
import type { Pixels } from './quiet-sharp';
import { type UnpackedPdf, unpackPdf } from './unpack-pdf';
import { type UnpackedPicture, unpackPicture } from './unpack-picture';
import { type UnpackedSvg, unpackSvg } from './unpack-svg';

type Refused = Extract<UnpackedPicture | UnpackedSvg | UnpackedPdf, { ok: false }>;

/** Why a file cannot be made pixels of. */
export type UnpackRefusal = Refused['reason'];

export type UnpackedArt =
  | {
      readonly ok: true;
      readonly pixels: Pixels;
      readonly notes: ArtNote[];
      /** The file itself is the upright sRGB picture, in a kind that everything draws from. */
      readonly fileIsPicture: boolean;
    }
  | { readonly ok: false; readonly reason: UnpackRefusal };

/** Makes any file that is taken as art into upright sRGB pixels. */
export async function unpackArt(path: string, mediaType: ArtMediaType): Promise<UnpackedArt> {
  const unpacked = isRaster(mediaType)
    ? await unpackPicture(path, mediaType)
    : await (mediaType === 'application/pdf' ? unpackPdf(path) : unpackSvg(path));
  if (!unpacked.ok) return unpacked;
  const isPlain = mediaType === 'image/png' || mediaType === 'image/jpeg';
  return { ...unpacked, fileIsPicture: isPlain && unpacked.notes.length === 0 };
}
