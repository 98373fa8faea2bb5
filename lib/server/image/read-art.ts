import { writeFile } from 'node:fs/promises';
import type { ArtFacts } from '@/lib/domain/art/art-facts';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import { factsOfPixels } from '@/lib/domain/art/check/facts-of-pixels';
import { type Ink, inkOfPixels } from '@/lib/domain/art/ink';
import type { ArtMediaType } from './file-kind';
import { writeProxy } from './proxy';
import { openPixels, type Pixels } from './quiet-sharp';
import { type UnpackRefusal, unpackArt } from './unpack-art';

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
  readonly facts: ArtFacts;
  /** The file itself is the upright sRGB picture; nothing was written to `picturePath`. */
  readonly fileIsPicture: boolean;
};

export type ReadArtResult = ReadArt | { readonly ok: false; readonly reason: UnpackRefusal | 'nothingToPrint' };

/** Reads an uploaded picture once: checks it, unpacks it, finds its ink, and writes what the surfaces draw from. */
export async function readArt({ path, mediaType, picturePath, proxyPath }: ReadArtRequest): Promise<ReadArtResult> {
  const unpacked = await unpackArt(path, mediaType);
  if (!unpacked.ok) return unpacked;
  const { pixels, fileIsPicture } = unpacked;
  const ink = inkOfPixels(pixels.rgba, pixels.widthPx, pixels.heightPx);
  if (!ink) return { ok: false, reason: 'nothingToPrint' };
  const notes: ArtNote[] = ink.anyClear ? unpacked.notes : [...unpacked.notes, 'noTransparency'];

  if (!fileIsPicture) await writeFile(picturePath, await asPng(pixels));
  await writeProxy(pixels, proxyPath);
  return {
    ok: true,
    widthPx: pixels.widthPx,
    heightPx: pixels.heightPx,
    ink: { inkBox: ink.inkBox, inkHull: ink.inkHull },
    notes,
    facts: factsOfPixels(pixels, ink),
    fileIsPicture,
  };
}

/** Filtered row by row: a photograph packs to half of what it would otherwise (PNG Third Edition, 12.7). */
function asPng(pixels: Pixels): Promise<Uint8Array> {
  return openPixels(pixels).png({ compressionLevel: 3, adaptiveFiltering: true }).toBuffer();
}
