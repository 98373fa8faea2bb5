import { letGo } from '@/lib/domain/layout/stack';
import { canEditPrint, canMovePrint, chosenPrint, printInHand, withPrint } from '../chosen-print';
import type { Command } from '../command';
import { stackOffer } from '../stack-offer';

/** Keeps the print in hand under the one above it: where that one goes, and however it is sized, the gap stays. */
export const keepUnder: Command<void> = {
  id: 'keepUnder',
  keys: [],
  otherwise: 'noneAbove',
  canRun: (state) => canMovePrint(state) && stackOffer(state) !== null,
  run: (state) => {
    const offer = stackOffer(state);
    if (!offer) return state.layout;
    const below = { printId: offer.upper.printId, gapUm: offer.gapUm };
    return withPrint(state.layout, printInHand(state).print.printId, (print) => ({ ...print, below }));
  },
};

/** Lets the print in hand go from the one above; it stays where it is. */
export const letGoOfPrint: Command<void> = {
  id: 'letGo',
  keys: [],
  otherwise: 'notUnder',
  canRun: (state) => canEditPrint(state) && chosenPrint(state)?.print.below !== undefined,
  run: (state) => withPrint(state.layout, printInHand(state).print.printId, letGo),
};
