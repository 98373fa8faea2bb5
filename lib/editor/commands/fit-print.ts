import { type FitSuggestion, withOwnWidth } from '@/lib/domain/layout/layout-fit';
import { canEditPrint, printInHand, withPrint } from '../chosen-print';
import type { Command } from '../command';

/** Sets the print in hand at a width that fits on the sizes where it does not; they get a size group of their own. */
export const fitSizes: Command<{ readonly suggestion: FitSuggestion; readonly newId: () => string }> = {
  id: 'fitSizes',
  keys: [],
  canRun: canEditPrint,
  run: (state, { suggestion, newId }) => {
    const { print } = printInHand(state);
    if (!print.sizeGroups.some(({ groupId }) => groupId === suggestion.groupId)) return state.layout;
    return withPrint(state.layout, print.printId, (each) => withOwnWidth(each, suggestion, newId()));
  },
};
