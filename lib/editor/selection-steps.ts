import { sidesOf } from '@/lib/domain/garment/kinds';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { printsOn } from '@/lib/domain/layout/scene';
import { garmentOf, keyOf, sameSize, sizeOf, sizesToShow } from '@/lib/domain/layout/sizes';
import { type Selection, selectGarment, selectPrint, selectSide, selectSize } from './selection';

type Shown = Pick<LayoutDocument, 'garments' | 'prints'>;

/** On to the next one (1) or back to the one before (-1); after the last comes the first. */
export type StepBy = 1 | -1;

/** A step from what lies on the table to the next of its kind; null where there is no other. */
export type SelectionStep = (layout: Shown, selection: Selection) => Selection | null;

/** The next side of the garment up, in the order they are listed. */
export function sideStep(by: StepBy): SelectionStep {
  return (layout, selection) => {
    const sides = sidesOf(kindShown(layout, selection));
    const side = next(sides, sides.indexOf(selection.side), by);
    return side === null ? null : selectSide(layout, selection, side);
  };
}

/** The garment turned over: front for back and back for anything else; null for a kind that has no back to decorate. */
export const turnOver: SelectionStep = (layout, selection) => {
  const side = selection.side === 'front' ? 'back' : 'front';
  return sidesOf(kindShown(layout, selection)).includes(side) ? selectSide(layout, selection, side) : null;
};

/** The next print of the side in hand, from the one on top downwards. */
export function printStep(by: StepBy): SelectionStep {
  return (layout, selection) => {
    const pile = printsOn(layout, selection).map(({ printId }) => printId);
    pile.reverse();
    const at = pile.indexOf(selection.printId ?? '');
    if (at < 0) return pile[0] === undefined ? null : selectPrint(layout, selection, pile[0]);
    const printId = next(pile, at, by);
    return printId === null ? null : selectPrint(layout, selection, printId);
  };
}

/** The next size that hangs on the line. */
export function sizeStep(by: StepBy): SelectionStep {
  return (layout, selection) => {
    const sizes = sizesToShow(garmentOf(layout, selection.garmentId)).map(keyOf);
    const at = sizes.findIndex((size) => sameSize(size, selection.size));
    const size = next(sizes, at, by);
    return size === null ? null : selectSize(layout, selection, size);
  };
}

/** The next garment of the job. */
export function garmentStep(by: StepBy): SelectionStep {
  return (layout, selection) => {
    const ids = layout.garments.map(({ garmentId }) => garmentId);
    const garmentId = next(ids, ids.indexOf(selection.garmentId), by);
    return garmentId === null ? null : selectGarment(layout, selection, garmentId);
  };
}

function kindShown(layout: Shown, { garmentId, size }: Selection) {
  return sizeOf(garmentOf(layout, garmentId), size).blank.kind;
}

/** The one after or before in a round; null where it would be the same one. */
function next<Item>(items: readonly Item[], at: number, by: StepBy): Item | null {
  const found = items[(Math.max(at, 0) + by + items.length) % items.length];
  return items.length < 2 || found === undefined ? null : found;
}
