import { acrossSign } from '@/lib/domain/layout/placement';
import { type Micrometres, UM_PER_MM } from '@/lib/domain/measure/length';
import { canMovePrint, printInHand, withReadings } from '../chosen-print';
import type { Command } from '../command';
import { heldReadingUm } from '../print-limits';
import { type Offer, offersAt } from '../snap-offers';
import { caughtUm, nudgeUm, type Snap } from '../snapping';
import { usualPlace } from '../usual-place';

/** How far the pointer has dragged since the print was taken hold of: millimetres on the paper, x to the viewer's right, y down. */
type MovePrint = { readonly byXMm: number; readonly byYMm: number; readonly snap: Snap };

/** Drags the print: drop and across of its size group follow the pointer, and are caught by what is offered near by. */
export const movePrint: Command<MovePrint> = {
  id: 'movePrint',
  keys: [],
  canRun: canMovePrint,
  run: (state, { byXMm, byYMm, snap }) => {
    const chosen = printInHand(state);
    const { dropUm, acrossUm } = chosen.group;
    const to = {
      dropUm: dropUm + byYMm * UM_PER_MM,
      acrossUm: acrossUm + byXMm * UM_PER_MM * acrossSign(chosen.print.side),
    };
    const offers = snap ? offersAt(state, to, snap.unseen) : [];
    const offered = (of: Offer['of']) => offers.filter((offer) => offer.of === of).map(({ um }) => um);
    return withReadings(state.layout, chosen, {
      dropUm: heldReadingUm(caughtUm(to.dropUm, offered('drop'), snap)),
      acrossUm: heldReadingUm(caughtUm(to.acrossUm, offered('across'), snap)),
    });
  },
};

export type NudgeDirection = 'up' | 'down' | 'left' | 'right';

/** Moves the print one step, or a stride, the way an arrow points on the screen. */
export const nudgePrint: Command<{ readonly direction: NudgeDirection; readonly stride: boolean }> = {
  id: 'nudgePrint',
  keys: ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight'].flatMap((key) => [key, `Shift+${key}`]),
  canRun: canMovePrint,
  run: (state, { direction, stride }) => {
    const chosen = printInHand(state);
    const step = nudgeUm(state.unit, stride);
    const { dropUm, acrossUm } = chosen.group;
    if (direction === 'up' || direction === 'down') {
      return withReadings(state.layout, chosen, {
        dropUm: heldReadingUm(dropUm + (direction === 'up' ? -step : step)),
      });
    }
    const towards = acrossSign(chosen.print.side) * (direction === 'right' ? step : -step);
    return withReadings(state.layout, chosen, { acrossUm: heldReadingUm(acrossUm + towards) });
  },
};

/** Sets how far down the print is, as typed. */
export const setDrop: Command<{ readonly dropUm: Micrometres }> = {
  id: 'setDrop',
  keys: [],
  canRun: canMovePrint,
  run: (state, { dropUm }) => withReadings(state.layout, printInHand(state), { dropUm: heldReadingUm(dropUm) }),
};

/** Sets how far the print is from the centre line, as typed; positive towards the wearer's left. */
export const setAcross: Command<{ readonly acrossUm: Micrometres }> = {
  id: 'setAcross',
  keys: [],
  canRun: canMovePrint,
  run: (state, { acrossUm }) => withReadings(state.layout, printInHand(state), { acrossUm: heldReadingUm(acrossUm) }),
};

/** Puts the print back where its location usually has it: between the armholes at the usual drop, or at the usual chest place. */
export const centrePrint: Command<void> = {
  id: 'centrePrint',
  keys: [],
  canRun: (state) => canMovePrint(state) && usualPlace(state) !== null,
  run: (state) => withReadings(state.layout, printInHand(state), usualPlace(state) ?? {}),
};
