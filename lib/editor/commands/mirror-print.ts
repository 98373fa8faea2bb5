import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import { LOCATIONS, type LocationId, startingValues } from '@/lib/domain/layout/locations';
import { acrossSign } from '@/lib/domain/layout/placement';
import { printsOn } from '@/lib/domain/layout/scene';
import { normaliseTurn } from '@/lib/domain/measure/angle';
import { canEditPrint, chosenPrint, printInHand } from '../chosen-print';
import type { Command, TableState } from '../command';
import { withTwin } from '../twin-print';
import type { MakesPrints } from './duplicate-print';

/** The location at the same place on the wearer's other side. */
const OTHER_SIDE: Partial<Record<LocationId, LocationId>> = {
  leftChest: 'rightChest',
  rightChest: 'leftChest',
  leftSleeve: 'rightSleeve',
  rightSleeve: 'leftSleeve',
};

/** Lays the picture in hand at the same place on the wearer's other side: chest to chest, sleeve to sleeve. */
export const mirrorPrint: Command<MakesPrints> = {
  id: 'mirrorPrint',
  keys: ['M'],
  canRun: (state) => {
    const chosen = canEditPrint(state) ? chosenPrint(state) : null;
    return chosen !== null && mirrorLocation(state.layout, chosen.print) !== null;
  },
  otherwise: 'noMirror',
  run: (state, { newId }) => mirrored(state.layout, printInHand(state).print, newId),
};

/** Lays out the other sleeve as the one that is up: every print of it, mirrored. */
export const mirrorSleeve: Command<MakesPrints> = {
  id: 'mirrorSleeve',
  keys: ['Shift+M'],
  needs: 'garment',
  canRun: (state) => !state.locked && sleevePrints(state).length > 0,
  otherwise: 'notASleeve',
  run: (state, { newId }) =>
    sleevePrints(state).reduce((layout, print) => mirrored(layout, print, newId), state.layout),
};

/** The prints on the sleeve that is up; none where another side is up. */
function sleevePrints({ layout, selection }: TableState): Print[] {
  if (selection?.side !== 'leftSleeve' && selection?.side !== 'rightSleeve') return [];
  return printsOn(layout, selection).filter((print) => mirrorLocation(layout, print) !== null);
}

/** Where the mirrored print goes; null where its location has no other side, or not on all of its garments. */
function mirrorLocation(layout: LayoutDocument, { locationId, garmentIds }: Print): LocationId | null {
  const other = OTHER_SIDE[locationId];
  const blanks = layout.garments
    .filter(({ garmentId }) => garmentIds.includes(garmentId))
    .flatMap((garment) => garment.blanks);
  return other && blanks.every((blank) => startingValues(other, blank)) ? other : null;
}

/**
 * Mirrored about the middle of the wearer; the picture itself is not, since words must stay readable. Across runs towards
 * the wearer's left on the body and towards the front on a sleeve: mirrored, the first changes its sign and the second
 * does not. A turn goes the other way round.
 */
function mirrored(layout: LayoutDocument, print: Print, newId: () => string): LayoutDocument {
  const locationId = mirrorLocation(layout, print);
  if (!locationId) return layout;
  const { side } = LOCATIONS[locationId];
  const sign = -acrossSign(print.side) * acrossSign(side);
  const place = {
    garmentIds: print.garmentIds,
    side,
    locationId,
    turnCentideg: normaliseTurn(-print.turnCentideg) + 0,
    sizeGroups: print.sizeGroups.map((group) => ({
      ...group,
      groupId: newId(),
      acrossUm: sign * group.acrossUm + 0,
    })),
  };
  return withTwin(layout, print, place, newId());
}
