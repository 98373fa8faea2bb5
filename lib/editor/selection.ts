import type { Side } from '@/lib/domain/garment/flat';
import { sidesOf } from '@/lib/domain/garment/kinds';
import type { Garment, LayoutDocument, Print, SizeKey } from '@/lib/domain/layout/document';
import { keyOf, middleOf, offeredSizes, sameSize, sizesToShow } from '@/lib/domain/layout/sizes';

/** What lies on the table: one side of one garment in one size, and the print in hand, if any. */
export type Selection = {
  readonly garmentId: string;
  readonly size: SizeKey;
  readonly side: Side;
  readonly printId: string | null;
};

type Shown = Pick<LayoutDocument, 'garments' | 'prints'>;

/** What to lay out first: the first garment in its most ordered size, with the first print on its front. Null without a garment. */
export function firstSelection(layout: Shown): Selection | null {
  const garment = layout.garments[0];
  return garment ? garmentSelection(layout, garment) : null;
}

/**
 * The selection as it can be in this layout: what it names and still exists stays, the rest falls back to what would be
 * laid out first. A print in hand turns the garment to its side. Null without a garment.
 */
export function settledSelection(layout: Shown, selection: Selection | null): Selection | null {
  const garment = layout.garments.find(({ garmentId }) => garmentId === selection?.garmentId);
  if (!(selection && garment)) return firstSelection(layout);
  const size =
    offeredSizes(garment)
      .map(keyOf)
      .find((key) => sameSize(key, selection.size)) ?? usualSize(garment);
  const print = layout.prints.find((each) => each.printId === selection.printId && isOn(each, garment.garmentId));
  const side = print?.side ?? sideOffered(garment, size, selection.side);
  return sameSelection(selection, { garmentId: garment.garmentId, size, side, printId: print?.printId ?? null });
}

/** Another garment on the table, in its most ordered size, with the first print of its front in hand. */
export function selectGarment(layout: Shown, selection: Selection, garmentId: string): Selection {
  const garment = layout.garments.find((each) => each.garmentId === garmentId);
  return !garment || garmentId === selection.garmentId ? selection : garmentSelection(layout, garment);
}

/** The same garment in another size; what is in hand stays in hand. */
export function selectSize(layout: Shown, selection: Selection, size: SizeKey): Selection {
  return settledSelection(layout, { ...selection, size }) ?? selection;
}

/** The other side up; the first print on that side comes in hand, so that its readings show. */
export function selectSide(layout: Shown, selection: Selection, side: Side): Selection {
  if (side === selection.side) return selection;
  return { ...selection, side, printId: firstPrintOn(layout, selection.garmentId, side)?.printId ?? null };
}

/** Takes a print in hand (null: none), turning the garment over or laying out another where the print is elsewhere. */
export function selectPrint(layout: Shown, selection: Selection, printId: string | null): Selection {
  const print = layout.prints.find((each) => each.printId === printId);
  if (!print) return { ...selection, printId: null };
  if (isOn(print, selection.garmentId)) return { ...selection, side: print.side, printId: print.printId };
  const garment = layout.garments.find(({ garmentId }) => isOn(print, garmentId));
  return garment ? { ...garmentSelection(layout, garment), side: print.side, printId: print.printId } : selection;
}

/**
 * The selection after an edit, an undo or a redo: the print that changed comes in hand, in a size whose readings changed,
 * so that nothing happens out of sight. Where prints that keep under one another changed together, that is the uppermost:
 * the others only followed it.
 */
export function followedSelection(before: Shown, after: Shown, selection: Selection | null): Selection | null {
  const changed = after.prints.filter((print) => !before.prints.includes(print));
  const [print, ...more] = changed.filter(({ below }) => !changed.some(({ printId }) => printId === below?.printId));
  if (!(selection && print && more.length === 0)) return selection;
  const chosen = selectPrint(after, selection, print.printId);
  const old = before.prints.find(({ printId }) => printId === print.printId);
  const groups = print.sizeGroups.filter((group) => old && !old.sizeGroups.includes(group));
  const garment = after.garments.find(({ garmentId }) => garmentId === chosen.garmentId);
  if (groups.length !== 1 || !garment) return chosen;
  const sizes = sizesToShow(garment).map(keyOf);
  const inGroup = (size: SizeKey) => groups.some(({ members }) => members.some((member) => sameSize(member, size)));
  const size = inGroup(chosen.size) ? chosen.size : sizes.find(inGroup);
  return size ? { ...chosen, size } : chosen;
}

function garmentSelection(layout: Shown, garment: Garment): Selection {
  return {
    garmentId: garment.garmentId,
    size: usualSize(garment),
    side: 'front',
    printId: firstPrintOn(layout, garment.garmentId, 'front')?.printId ?? null,
  };
}

/** The size most are ordered in, the first of several; while nothing is ordered, the middle one of those offered. */
function usualSize(garment: Garment): SizeKey {
  const shown = sizesToShow(garment);
  const most = Math.max(...shown.map(({ quantity }) => quantity));
  const usual = most > 0 ? shown.find(({ quantity }) => quantity === most) : middleOf(shown);
  if (!usual) throw new Error(`${garment.name} is offered in no size`);
  return keyOf(usual);
}

function sideOffered(garment: Garment, size: SizeKey, side: Side): Side {
  const blank = garment.blanks.find(({ blankId }) => blankId === size.blankId);
  return blank && sidesOf(blank.kind).includes(side) ? side : 'front';
}

function firstPrintOn(layout: Shown, garmentId: string, side: Side): Print | undefined {
  return layout.prints.find((print) => print.side === side && isOn(print, garmentId));
}

function isOn(print: Print, garmentId: string): boolean {
  return print.garmentIds.includes(garmentId);
}

/** Keeps the old object where nothing changed, so that views can compare by reference. */
function sameSelection(before: Selection, after: Selection): Selection {
  const same =
    before.garmentId === after.garmentId &&
    before.side === after.side &&
    before.printId === after.printId &&
    sameSize(before.size, after.size);
  return same ? before : after;
}
