import { canEditPrint, printInHand, withPrint } from '../chosen-print';
import type { Command } from '../command';

/** Goes ahead with the print in hand though its picture prints soft, or takes that back. */
export const goAheadSoft: Command<{ readonly on: boolean }> = {
  id: 'goAheadSoft',
  keys: [],
  canRun: canEditPrint,
  run: (state, { on }) => {
    const { print } = printInHand(state);
    if ((print.goAheadSoft === true) === on) return state.layout;
    return withPrint(state.layout, print.printId, ({ goAheadSoft: _before, ...each }) =>
      on ? { ...each, goAheadSoft: true } : each,
    );
  },
};
