import {
  type GroupSuggestion,
  isGroupedSo,
  suggestedSizeGroups,
  withGroups,
  withOneWidth,
} from '@/lib/domain/layout/size-group-suggestion';
import { canMovePrint, chosenPrint, printInHand, withPrint } from '../chosen-print';
import type { Command, TableState } from '../command';

/** Sets the print in hand to widths at which it looks alike on every size, starting from the size shown. */
export const suggestGroups: Command<{ readonly newId: () => string }> = {
  id: 'suggestGroups',
  keys: [],
  canRun: canMovePrint,
  run: (state, { newId }) => {
    const suggestion = groupSuggestion(state);
    const { selection, layout } = state;
    if (!suggestion || !selection) return layout;
    return withPrint(layout, printInHand(state).print.printId, (print) =>
      withGroups(print, suggestion, selection.size, newId),
    );
  },
};

/** Sets the print in hand to the width of the size shown on every size; drops and distances across stay. */
export const oneWidth: Command<void> = {
  id: 'oneWidth',
  keys: [],
  canRun: canMovePrint,
  run: (state) => {
    const { print, group } = printInHand(state);
    if (print.sizeGroups.every(({ widthUm }) => widthUm === group.widthUm)) return state.layout;
    return withPrint(state.layout, print.printId, (each) => withOneWidth(each, group.widthUm));
  },
};

/** The size groups suggested for the print in hand from the size shown; null where it has them already, or none are. */
export function groupSuggestion(
  state: Pick<TableState, 'layout' | 'selection' | 'unit' | 'type'>,
): GroupSuggestion | null {
  const chosen = chosenPrint(state);
  if (!chosen || !state.selection) return null;
  const { print } = chosen;
  const suggestion = suggestedSizeGroups(print, state.layout, {
    unit: state.unit,
    anchor: state.selection.size,
    setType: state.type?.longest,
  });
  return suggestion && !isGroupedSo(print, suggestion) ? suggestion : null;
}
