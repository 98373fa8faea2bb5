import type { Print } from '@/lib/domain/layout/document';
import { placedPrint, printsOn } from '@/lib/domain/layout/scene';
import { keyOf, sizeOf } from '@/lib/domain/layout/sizes';
import { USUAL_GAP_UM } from '@/lib/domain/layout/stack';
import { gapOnSize } from '@/lib/domain/layout/stack-drops';
import { canKeepUnder } from '@/lib/domain/layout/stack-order';
import { type Micrometres, umFromInches } from '@/lib/domain/measure/length';
import { type ChosenPrint, chosenPrint } from './chosen-print';
import type { TableState } from './command';

/** What a print can keep under, and at what gap. */
export type StackOffer = { readonly upper: Print; readonly gapUm: Micrometres };

/** Prints further apart than this are not meant as one (by eye). */
const FURTHEST_GAP_UM = umFromInches(6);

/**
 * The print the one in hand can keep under on the size shown: of those of its side that lie above it, the nearest. The gap
 * is the present one, or the usual one where the two lie over each other. Null where none does, or it keeps under one.
 */
export function stackOffer(state: Pick<TableState, 'layout' | 'selection' | 'type'>): StackOffer | null {
  const chosen = chosenPrint(state);
  if (!chosen || !state.selection || chosen.print.below) return null;
  const { print, garment, flat } = chosen;
  const offered = sizeOf(garment, state.selection.size);
  const middleOf = (each: Print) => {
    const { y, height } = placedPrint(each, keyOf(offered), flat, state.type?.sample).readBox;
    return y + height / 2;
  };
  const offers = printsOn(state.layout, { garmentId: garment.garmentId, side: print.side })
    .filter((upper) => canKeepUnder(state.layout, print, upper) && middleOf(upper) < middleOf(print))
    .map((upper) => ({ upper, gapUm: gapOnSize(upper, print, offered, state.type) }))
    .filter(({ gapUm }) => gapUm <= FURTHEST_GAP_UM)
    .sort((a, b) => a.gapUm - b.gapUm);
  const [nearest] = offers;
  return nearest ? { ...nearest, gapUm: nearest.gapUm < 0 ? USUAL_GAP_UM : nearest.gapUm } : null;
}

/** What the print in hand keeps under, and at what gap; null where it keeps under none. */
export function keptUnder({ layout }: Pick<TableState, 'layout'>, { print }: ChosenPrint): StackOffer | null {
  const upper = layout.prints.find(({ printId }) => printId === print.below?.printId);
  return upper && print.below ? { upper, gapUm: print.below.gapUm } : null;
}
