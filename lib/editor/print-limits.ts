import type { ArtRef } from '@/lib/domain/art/art-ref';
import { inkHeightUm, widthForHeightUm } from '@/lib/domain/layout/placement';
import type { StartingInk } from '@/lib/domain/layout/starting-groups';
import { type Micrometres, roundUm, UM_PER_INCH, UM_PER_MM } from '@/lib/domain/measure/length';

/** As many prints as a layout document takes. */
export const MOST_PRINTS = 100;

/** The longer side of the smallest and the largest print that can be set (common practice, no source). */
export const SMALLEST_PRINT_UM: Micrometres = UM_PER_INCH / 4;
export const LARGEST_PRINT_UM: Micrometres = 60 * UM_PER_INCH;

/** The furthest a print is set from where it is measured: beyond any garment (common practice, no source). */
export const FURTHEST_READING_UM: Micrometres = 60 * UM_PER_INCH;

/** The least width a layout document takes. */
const LEAST_WIDTH_UM: Micrometres = UM_PER_MM;

/** The lowest and the tallest letters that can be set (common practice, no source). */
export const LEAST_LETTERS_UM: Micrometres = UM_PER_INCH / 8;
export const MOST_LETTERS_UM: Micrometres = 20 * UM_PER_INCH;

/**
 * The narrowest and widest a picture can be set so that its longer side stays within the limits; of lettering, the least
 * and the most it can be let take across.
 */
export function widthLimitsUm(ink: StartingInk): { leastUm: Micrometres; mostUm: Micrometres } {
  if (!('inkBox' in ink)) return { leastUm: SMALLEST_PRINT_UM, mostUm: LARGEST_PRINT_UM };
  const tall = ink.inkBox.height > ink.inkBox.width;
  const least = tall ? widthForHeightUm(ink, SMALLEST_PRINT_UM) : SMALLEST_PRINT_UM;
  const most = tall ? widthForHeightUm(ink, LARGEST_PRINT_UM) : LARGEST_PRINT_UM;
  const leastUm = Math.max(LEAST_WIDTH_UM, least);
  return { leastUm, mostUm: Math.max(leastUm, most) };
}

/** A width brought within what can be set. Whole micrometres; not-a-number becomes the least. */
export function heldWidthUm(ink: StartingInk, widthUm: number): Micrometres {
  const { leastUm, mostUm } = widthLimitsUm(ink);
  return Number.isNaN(widthUm) ? leastUm : Math.min(mostUm, Math.max(leastUm, roundUm(widthUm)));
}

/** A letter height brought within what can be set. Whole micrometres; not-a-number becomes the least. */
export function heldLettersUm(capHeightUm: number): Micrometres {
  if (Number.isNaN(capHeightUm)) return LEAST_LETTERS_UM;
  return Math.min(MOST_LETTERS_UM, Math.max(LEAST_LETTERS_UM, roundUm(capHeightUm)));
}

/** A drop or a distance across brought within reach of a garment. Whole micrometres; not-a-number becomes nothing. */
export function heldReadingUm(um: number): Micrometres {
  if (Number.isNaN(um)) return 0;
  return Math.min(FURTHEST_READING_UM, Math.max(-FURTHEST_READING_UM, roundUm(um)));
}

/** Why a size cannot be set, or null when it can. `widthUm` is that of the unturned ink. */
export function sizeRefusal(ink: StartingInk, widthUm: Micrometres): 'tooSmall' | 'tooLarge' | null {
  const { leastUm, mostUm } = widthLimitsUm(ink);
  if (widthUm < leastUm) return 'tooSmall';
  return widthUm > mostUm ? 'tooLarge' : null;
}

/** Why a letter height cannot be set, or null when it can. */
export function lettersRefusal(capHeightUm: Micrometres): 'lettersTooSmall' | 'lettersTooLarge' | null {
  if (capHeightUm < LEAST_LETTERS_UM) return 'lettersTooSmall';
  return capHeightUm > MOST_LETTERS_UM ? 'lettersTooLarge' : null;
}

/** The longer side of a picture set at a width. */
export function longerSideUm(art: Pick<ArtRef, 'inkBox'>, widthUm: Micrometres): Micrometres {
  return Math.max(widthUm, inkHeightUm(art, widthUm));
}
