import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { printsOn } from '@/lib/domain/layout/scene';
import { canEditPrint, printInHand } from '../chosen-print';
import type { Command, TableState } from '../command';

/** Lays the print above the next one that lies over it on the garment shown. */
export const raisePrint: Command<void> = {
  id: 'raisePrint',
  keys: ['PageUp'],
  canRun: (state) => !isOutermost(state, -1),
  otherwise: 'onTop',
  run: (state) => beside(state, (pile, at) => pile[at + 1], 1),
};

/** Lays the print below the next one that lies under it. */
export const lowerPrint: Command<void> = {
  id: 'lowerPrint',
  keys: ['PageDown'],
  canRun: (state) => !isOutermost(state, 0),
  otherwise: 'atBottom',
  run: (state) => beside(state, (pile, at) => pile[at - 1], 0),
};

/** Lays the print over all others on its side. */
export const layOnTop: Command<void> = {
  id: 'layOnTop',
  keys: ['Shift+PageUp'],
  canRun: (state) => !isOutermost(state, -1),
  otherwise: 'onTop',
  run: (state) => beside(state, (pile) => pile.at(-1), 1),
};

/** Lays the print under all others on its side. */
export const layAtBottom: Command<void> = {
  id: 'layAtBottom',
  keys: ['Shift+PageDown'],
  canRun: (state) => !isOutermost(state, 0),
  otherwise: 'atBottom',
  run: (state) => beside(state, (pile) => pile[0], 0),
};

/** The prints that lie on the side of the print in hand, lowest first: the order in which they are painted. */
function pileOf(state: TableState): readonly Print[] {
  const { print, garment } = printInHand(state);
  return printsOn(state.layout, { garmentId: garment.garmentId, side: print.side });
}

/** Whether the print in hand cannot go further: nothing of it can be changed, or it is the last (-1) or first (0) of its pile. */
function isOutermost(state: TableState, end: 0 | -1): boolean {
  return !canEditPrint(state) || pileOf(state).at(end)?.printId === state.selection?.printId;
}

type Neighbour = (pile: readonly Print[], at: number) => Print | undefined;

/** The layout with the print in hand painted just before (0) or just after (1) another of its pile. */
function beside(state: TableState, neighbour: Neighbour, after: 0 | 1): LayoutDocument {
  const { layout } = state;
  const { print } = printInHand(state);
  const pile = pileOf(state);
  const other = neighbour(pile, pile.indexOf(print));
  if (!other || other === print) return layout;
  const rest = layout.prints.filter((each) => each !== print);
  const at = rest.indexOf(other) + after;
  return { ...layout, prints: [...rest.slice(0, at), print, ...rest.slice(at)] };
}
