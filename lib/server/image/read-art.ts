import { readFile, writeFile } from 'node:fs/promises';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import { type Ink, inkOfPixels } from '@/lib/domain/art/ink';
import type { ArtMediaType } from './file-kind';
import { jpegStructure } from './jpeg-structure';
import { pngDataIsWhole, pngStructure } from './png-structure';
import { writeProxy } from './proxy';
import { MOST_PIXELS, openPicture, openPixels, type Pixels, toPixels } from './quiet-sharp';

export type ReadArtRequest = {
  readonly path: string;
  readonly mediaType: ArtMediaType;
  /** Where the upright sRGB picture is written, when the file itself is not that already. */
  readonly picturePath: string;
  /** Where its small picture for screens is written. */
  readonly proxyPath: string;
};

/** A picture as it is drawn and printed: upright, in sRGB. */
export type ReadArt = {
  readonly ok: true;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly ink: Pick<Ink, 'inkBox' | 'inkHull'>;
  readonly notes: ArtNote[];
  /** The file itself is the upright sRGB picture; nothing was written to `picturePath`. */
  readonly fileIsPicture: boolean;
};

export type ReadArtResult =
  | ReadArt
  | { readonly ok: false; readonly reason: 'damaged' | 'tooManyPixels' | 'nothingToPrint' };

/**
 * Reads an uploaded picture once: checks it, unpacks it, finds its ink, and writes what the surfaces draw from. Decoders
 * accept much that is broken, so the file's own structure is walked first, and its size is known before it is unpacked.
 */
export async function readArt({ path, mediaType, picturePath, proxyPath }: ReadArtRequest): Promise<ReadArtResult> {
  const bytes = await readFile(path);
  const structure = mediaType === 'image/png' ? pngStructure(bytes) : jpegStructure(bytes);
  if (!structure.ok) return structure;
  if (structure.widthPx * structure.heightPx > MOST_PIXELS) return { ok: false, reason: 'tooManyPixels' };
  if (mediaType === 'image/png' && !(await pngDataIsWhole(bytes))) return { ok: false, reason: 'damaged' };

  const unpacked = await unpack(path);
  if (!unpacked) return { ok: false, reason: 'damaged' };
  const { pixels, notes } = unpacked;
  const ink = inkOfPixels(pixels.rgba, pixels.widthPx, pixels.heightPx);
  if (!ink) return { ok: false, reason: 'nothingToPrint' };
  if (!ink.anyClear) notes.push('noTransparency');
  if ('animated' in structure && structure.animated) notes.push('firstFrameOnly');

  const fileIsPicture = notes.every((note) => note === 'noTransparency');
  if (!fileIsPicture) await writeFile(picturePath, await asPng(pixels));
  await writeProxy(pixels, proxyPath);
  return {
    ok: true,
    widthPx: pixels.widthPx,
    heightPx: pixels.heightPx,
    ink: { inkBox: ink.inkBox, inkHull: ink.inkHull },
    notes,
    fileIsPicture,
  };
}

/** Filtered row by row: a photograph packs to half of what it would otherwise (PNG Third Edition, 12.7). */
function asPng(pixels: Pixels): Promise<Uint8Array> {
  return openPixels(pixels).png({ compressionLevel: 3, adaptiveFiltering: true }).toBuffer();
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
