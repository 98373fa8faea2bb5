import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { factsOfPixels } from '@/lib/domain/art/check/facts-of-pixels';
import { inkOfPixels } from '@/lib/domain/art/ink';
import { openPicture, toPixels } from './quiet-sharp';

export type CheckPictureRequest = { readonly picturePath: string };

/** Measures a kept picture that was taken in before there was a check, or measured otherwise. */
export async function checkPicture({ picturePath }: CheckPictureRequest): Promise<ArtFacts> {
  const pixels = await toPixels(openPicture(picturePath));
  const ink = inkOfPixels(pixels.rgba, pixels.widthPx, pixels.heightPx);
  if (!ink) throw new Error(`checkPicture: nothing prints of ${picturePath}, which was taken in`);
  return factsOfPixels(pixels, ink);
}
