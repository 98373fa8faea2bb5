import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { ArtRef } from '@/lib/domain/art/art-ref';
import { artFiles, storeFile } from '@/lib/server/files/store';
import { readArt } from '@/lib/server/image/read-art';
import type { Random } from './seeded-random';

/** A rectangle of whole pixels, all ink. */
export type InkRectangle = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** A picture whose ink is known because it was drawn here: rectangles in one flat colour on clear ground. */
export type KnownArt = {
  readonly ref: ArtRef;
  readonly rectangles: readonly InkRectangle[];
  /** 0 red, 1 green, 2 blue: the only channel that is lit, so that prints can be told apart in one file. */
  readonly channel: 0 | 1 | 2;
};

const COLOURS = ['#FF0000', '#00FF00', '#0000FF'] as const;

/** Draws a picture, keeps it in the file store, and has it read as an upload is. */
export async function drawKnownArt(
  random: Random,
  channel: 0 | 1 | 2,
  name: string,
  folder: string,
): Promise<KnownArt> {
  const widthPx = random.whole(900, 3_600);
  const heightPx = Math.round(widthPx * random.between(0.5, 1.3));
  const rectangles = Array.from({ length: random.whole(1, 4) }, () => {
    const width = random.whole(Math.ceil(widthPx / 6), Math.floor(widthPx / 2));
    const height = random.whole(Math.ceil(heightPx / 6), Math.floor(heightPx / 2));
    return { x: random.whole(0, widthPx - width), y: random.whole(0, heightPx - height), width, height };
  });
  const png = await sharp({ create: { width: widthPx, height: heightPx, channels: 4, background: '#00000000' } })
    .composite(
      rectangles.map(({ x, y, width, height }) => ({
        input: { create: { width, height, channels: 4 as const, background: COLOURS[channel] } },
        left: x,
        top: y,
      })),
    )
    .png({ compressionLevel: 3 })
    .toBuffer();
  return { ref: await refOf(png, name, folder), rectangles, channel };
}

async function refOf(png: Uint8Array, name: string, folder: string): Promise<ArtRef> {
  const { sha256 } = await storeFile(png);
  const proxyPath = join(folder, `${name}.webp`);
  const path = artFiles().pathOf(sha256);
  const read = await readArt({ path, mediaType: 'image/png', picturePath: join(folder, `${name}.png`), proxyPath });
  if (!read.ok || !read.fileIsPicture) throw new Error(`${name}: ${JSON.stringify(read)}`);
  if (readFileSync(proxyPath).length === 0) throw new Error(`${name}: no small picture`);
  rmSync(proxyPath);
  return { artId: name, sha256, widthPx: read.widthPx, heightPx: read.heightPx, ...read.ink };
}
