import { normaliseTurn } from '@/lib/domain/measure/angle';
import { tradeStepUm } from '@/lib/domain/measure/length';
import { canMovePrint, printInHand, withPrint, withReadings } from '../chosen-print';
import type { Command } from '../command';
import { heldLettersUm, heldWidthUm } from '../print-limits';

/** How far one press turns a print: 15° (common practice, no source). */
export const TURN_STEP_CENTIDEG = 1_500;

/** Makes the print wider or narrower, letters taller or lower, by the trade's step, proportions kept; its drop and distance across stay. */
export const stepSize: Command<{ readonly towards: 'wider' | 'narrower' }> = {
  id: 'stepSize',
  keys: [],
  canRun: canMovePrint,
  run: (state, { towards }) => {
    const chosen = printInHand(state);
    const step = towards === 'wider' ? tradeStepUm(state.unit) : -tradeStepUm(state.unit);
    const { widthUm, capHeightUm } = chosen.group;
    const { content } = chosen.print;
    if (content.kind === 'lettering') {
      return withReadings(state.layout, chosen, { capHeightUm: heldLettersUm((capHeightUm ?? 0) + step) });
    }
    return withReadings(state.layout, chosen, { widthUm: heldWidthUm(content.art, widthUm + step) });
  },
};

/** Turns the print on by 15°, clockwise as seen or back. */
export const stepTurn: Command<{ readonly towards: 'clockwise' | 'back' }> = {
  id: 'stepTurn',
  keys: [],
  canRun: canMovePrint,
  run: (state, { towards }) =>
    withPrint(state.layout, printInHand(state).print.printId, (print) => {
      const step = towards === 'clockwise' ? TURN_STEP_CENTIDEG : -TURN_STEP_CENTIDEG;
      return { ...print, turnCentideg: normaliseTurn(print.turnCentideg + step) + 0 };
    }),
};
