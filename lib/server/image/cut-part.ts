import type { Spot } from '@/lib/domain/art/art-facts';
import { openPicture } from './quiet-sharp';

export type CutPartRequest = { readonly picturePath: string; readonly box: Spot };

/**
 * A part of a kept picture, pixel for pixel, as lossless WebP: what is looked at closely must not be smoothed by the way it
 * is sent. The box is cut to what lies on the picture; null where nothing does.
 */
export async function cutPart({ picturePath, box }: CutPartRequest): Promise<Uint8Array | null> {
  const picture = openPicture(picturePath);
  const { width: widthPx, height: heightPx } = await picture.metadata();
  const width = Math.min(box.width, widthPx - box.x);
  const height = Math.min(box.height, heightPx - box.y);
  if (width < 1 || height < 1) return null;
  const part = picture.extract({ left: box.x, top: box.y, width, height }).toColourspace('srgb');
  return new Uint8Array(await part.webp({ lossless: true, effort: 2 }).toBuffer());
}
