import { suggestedHardenAlpha } from '@/lib/domain/art/mend/harden-edge';
import { suggestedPalette } from '@/lib/domain/art/mend/palette';
import { suggestedTolerance } from '@/lib/domain/art/mend/suggest-tolerance';
import { openPicture, toPixels } from './quiet-sharp';

/** What is to be found out in a picture's pixels. */
export type SuggestMendRequest = { readonly picturePath: string } & (
  | { readonly wanted: 'hardenAlpha' | 'palette' }
  | { readonly wanted: 'tolerance'; readonly hex: string }
);

export type SuggestedMend =
  | { readonly alpha: number }
  | { readonly colours: string[] }
  | { readonly tolerance: number };

/** Reads the settings of a mend off a kept picture. */
export async function suggestMend(request: SuggestMendRequest): Promise<SuggestedMend> {
  const pixels = await toPixels(openPicture(request.picturePath));
  switch (request.wanted) {
    case 'hardenAlpha':
      return { alpha: suggestedHardenAlpha(pixels) };
    case 'palette':
      return { colours: suggestedPalette(pixels) };
    case 'tolerance':
      return { tolerance: suggestedTolerance(pixels, request.hex) };
  }
}
