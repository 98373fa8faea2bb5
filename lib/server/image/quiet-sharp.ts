import sharp, { type Sharp, type SharpOptions } from 'sharp';

/** sharp as this project runs it: in a worker, one picture at a time, keeping nothing from one to the next. */
sharp.cache(false);

/** Most pixels of a picture that are unpacked: 80 million, a 22 × 40 in sheet at 300 px per inch. Four bytes each. */
export const MOST_PIXELS = 80_000_000;

/** Opens a picture that was already found sound, for reading; nothing past the pixel limit is ever unpacked. */
export function openPicture(path: string | Uint8Array, options: SharpOptions = {}): Sharp {
  return sharp(path, { limitInputPixels: MOST_PIXELS, failOn: 'warning', ...options });
}

/** Pixels in memory, four bytes each, not premultiplied. */
export type Pixels = { readonly rgba: Uint8Array; readonly widthPx: number; readonly heightPx: number };

/** Starts a pipeline from pixels in memory. */
export function openPixels({ rgba, widthPx, heightPx }: Pixels): Sharp {
  return sharp(rgba, { raw: { width: widthPx, height: heightPx, channels: 4 }, limitInputPixels: false });
}

/** The pixels at the end of a pipeline, as sRGB with alpha, eight bits a channel. */
export async function toPixels(pipeline: Sharp): Promise<Pixels> {
  const { data, info } = await pipeline
    .toColourspace('srgb')
    .ensureAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  if (info.channels !== 4) throw new Error(`toPixels: ${info.channels} channels`);
  return { rgba: data, widthPx: info.width, heightPx: info.height };
}
