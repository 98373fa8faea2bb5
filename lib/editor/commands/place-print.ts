import { acrossSign } from '@/lib/domain/layout/placement';
import { sameSize } from '@/lib/domain/layout/sizes';
import { startingGroups } from '@/lib/domain/layout/starting-groups';
import { type Micrometres, UM_PER_MM } from '@/lib/domain/measure/length';
import { canMovePrint, printInHand, withReadings } from '../chosen-print';
import type { Command, TableState } from '../command';
import { heldReadingUm } from '../print-limits';
import { nudgeUm, type Snap, snappedAcrossUm, snappedUm } from '../snapping';

/** How far the pointer has dragged since the print was taken hold of: millimetres on the paper, x to the viewer's right, y down. */
type MovePrint = { readonly byXMm: number; readonly byYMm: number; readonly snap: Snap };

/** Drags the print: drop and across of its size group follow the pointer. */
export const movePrint: Command<MovePrint> = {
  id: 'movePrint',
  keys: [],
  canRun: canMovePrint,
  run: (state, { byXMm, byYMm, snap }) => {
    const chosen = printInHand(state);
    const { dropUm, acrossUm } = chosen.group;
    const byAcrossUm = byXMm * UM_PER_MM * acrossSign(chosen.print.side);
    return withReadings(state.layout, chosen, {
      dropUm: heldReadingUm(snappedUm(dropUm + byYMm * UM_PER_MM, snap)),
      acrossUm: heldReadingUm(snappedAcrossUm(acrossUm + byAcrossUm, snap)),
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

/**
 * Where the location of the print in hand usually has it on the size shown, its drop that of the print it keeps under; null
 * when it knows no usual place for that size.
 */
export function usualPlace(state: TableState): { dropUm: Micrometres; acrossUm: Micrometres } | null {
  const { print, group } = printInHand(state);
  const garments = state.layout.garments.filter(({ garmentId }) => print.garmentIds.includes(garmentId));
  const groups = startingGroups(print.locationId, garments, print.content.art, () => 'unused');
  const size = state.selection?.size;
  const usual = groups?.find(({ members }) => members.some((member) => size && sameSize(member, size)));
  if (!usual) return null;
  return { dropUm: print.below ? group.dropUm : usual.dropUm, acrossUm: usual.acrossUm };
}
