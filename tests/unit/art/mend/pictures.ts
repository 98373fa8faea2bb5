import { execFileSync, spawnSync } from 'node:child_process';
import fc from 'fast-check';
import sharp from 'sharp';
import { clearPicture, type MendPicture } from '@/lib/domain/art/mend/mend-picture';

export type Rgba = readonly [red: number, green: number, blue: number, alpha: number];

/** A picture from a function of its pixels. */
export function painted(widthPx: number, heightPx: number, at: (x: number, y: number) => Rgba): MendPicture {
  const picture = clearPicture(widthPx, heightPx);
  for (let y = 0; y < heightPx; y += 1) {
    for (let x = 0; x < widthPx; x += 1) picture.rgba.set(at(x, y), (y * widthPx + x) * 4);
  }
  return picture;
}

export function pixelAt({ rgba, widthPx }: MendPicture, x: number, y: number): Rgba {
  const at = (y * widthPx + x) * 4;
  return [rgba[at] ?? 0, rgba[at + 1] ?? 0, rgba[at + 2] ?? 0, rgba[at + 3] ?? 0];
}

/** All pixels of a picture, row by row. */
export function pixelsOf(picture: MendPicture): Rgba[] {
  return Array.from({ length: picture.widthPx * picture.heightPx }, (_, index) =>
    pixelAt(picture, index % picture.widthPx, Math.floor(index / picture.widthPx)),
  );
}

export const alphasOf = (picture: MendPicture) => pixelsOf(picture).map(([, , , alpha]) => alpha);

/** Small pictures of pixels drawn from a few kinds, most of them clear or solid. */
export function anyPicture(kinds: readonly Rgba[], most = 12): fc.Arbitrary<MendPicture> {
  return fc
    .record({ widthPx: fc.integer({ min: 1, max: most }), heightPx: fc.integer({ min: 1, max: most }) })
    .chain(({ widthPx, heightPx }) =>
      fc
        .array(fc.constantFrom(...kinds), { minLength: widthPx * heightPx, maxLength: widthPx * heightPx })
        .map((pixels) => painted(widthPx, heightPx, (x, y) => pixels[y * widthPx + x] ?? [0, 0, 0, 0])),
    );
}

export const someKinds: readonly Rgba[] = [
  [0, 0, 0, 0],
  [0, 0, 0, 0],
  [9, 9, 9, 3],
  [200, 30, 40, 255],
  [20, 40, 90, 255],
  [200, 30, 40, 120],
  [255, 255, 255, 255],
];

/** A drawing as librsvg paints it, so many pixels wide and high, 0 to 100 units. */
export async function drawn(sizePx: number, shapes: string): Promise<MendPicture> {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${sizePx}" height="${sizePx}" viewBox="0 0 100 100">${shapes}</svg>`;
  const { data, info } = await sharp(Buffer.from(svg)).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { rgba: new Uint8Array(data), widthPx: info.width, heightPx: info.height };
}

/** One picture laid over a colour by libvips: an implementation of Porter and Duff's "over" that is not ours. */
export async function laidOver({ rgba, widthPx, heightPx }: MendPicture, hex: string): Promise<MendPicture> {
  const raw = { width: widthPx, height: heightPx, channels: 4 } as const;
  const { data } = await sharp({ create: { ...raw, background: hex } })
    .composite([{ input: Buffer.from(rgba), raw }])
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { rgba: new Uint8Array(data), widthPx, heightPx };
}

/** The greatest difference of a channel between two pictures of one size, pixel by pixel. */
export function differences(one: MendPicture, other: MendPicture): number[] {
  const [first, second] = [pixelsOf(one), pixelsOf(other)];
  return first.map((pixel, index) =>
    Math.max(...pixel.map((value, channel) => Math.abs(value - (second[index]?.[channel] ?? 0)))),
  );
}

export const hasImageMagick = spawnSync('convert', ['-version']).status === 0;
if (!hasImageMagick) console.log('skipped: ImageMagick is not installed, growing and pieces of ink are not compared');

/** What ImageMagick's convert makes of a picture's alpha taken as grey. */
export function magick(picture: MendPicture, options: readonly string[], output = 'pgm:-'): Buffer {
  const header = Buffer.from(`P5 ${picture.widthPx} ${picture.heightPx} 255\n`);
  const input = Buffer.concat([header, Buffer.from(alphasOf(picture))]);
  return execFileSync('convert', ['pgm:-', ...options, output], { input });
}

/** The grey values of a binary PGM. */
export function greysOf(pgm: Buffer): number[] {
  const header = /^P5\s+\d+\s+\d+\s+255\s/.exec(pgm.toString('latin1', 0, 60))?.[0];
  if (!header) throw new Error(`not a PGM: ${pgm.toString('latin1', 0, 20)}`);
  return [...pgm.subarray(header.length)];
}
