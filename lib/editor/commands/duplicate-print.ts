import { canEditPrint, printInHand } from '../chosen-print';
import type { Command } from '../command';
import { heldReadingUm, MOST_PRINTS } from '../print-limits';
import { nextName } from '../print-name';
import { nudgeUm } from '../snapping';

/** What a command that makes prints is given: a fresh id for the print and for each of its size groups. */
export type MakesPrints = { readonly newId: () => string };

/** Lays the same print again over the one in hand, a stride further down so that both are seen. */
export const duplicatePrint: Command<MakesPrints> = {
  id: 'duplicatePrint',
  keys: ['D'],
  canRun: (state) => canEditPrint(state) && state.layout.prints.length < MOST_PRINTS,
  otherwise: 'tooManyPrints',
  run: (state, { newId }) => {
    const { layout, unit } = state;
    const { print } = printInHand(state);
    const stride = nudgeUm(unit, true);
    // What was said about this one alone (why it crosses a seam, what it keeps under) does not go with the copy.
    const { fitNote: _fitNote, below: _below, ...plain } = print;
    const copy = {
      ...plain,
      printId: newId(),
      name: nextName(print.name, layout.prints),
      sizeGroups: print.sizeGroups.map((group) => ({
        ...group,
        groupId: newId(),
        dropUm: heldReadingUm(group.dropUm + stride),
      })),
    };
    const at = layout.prints.indexOf(print) + 1;
    return { ...layout, prints: [...layout.prints.slice(0, at), copy, ...layout.prints.slice(at)] };
  },
};
