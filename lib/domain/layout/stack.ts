import { type Micrometres, umFromInches } from '../measure/length';
import type { LayoutDocument, Print } from './document';
import type { LocationId } from './locations';
import { keyOf } from './sizes';
import { gapOnSize, isMember, relaid, type StackType, sharedSizes } from './stack-drops';
import { canKeepUnder, fromTheTop, type Layout, printOf } from './stack-order';

/** A number starts so far under its name, and under a crest (common practice, no source). */
export const USUAL_GAP_UM: Micrometres = umFromInches(1);

/** What a print at a location usually keeps under, where that is on the garment. */
const USUALLY_UNDER: Readonly<Partial<Record<LocationId, LocationId>>> = {
  backNumber: 'upperBack',
  frontNumber: 'centreChest',
};

/**
 * The layout after an edit with every stack laid anew: a print that keeps under another follows that one's foot at its gap,
 * size by size, on the trade's step (a drop within half a step of it stays). Where the lower one itself was moved, its gap
 * follows. One that went elsewhere, or whose upper is gone, is let go; one that came to a location that usually lies under
 * another's print keeps under that. The very same layout when nothing moves. Lettering needs the type
 * it is set in.
 */
export function restacked(
  before: Layout,
  after: LayoutDocument,
  stepUm: Micrometres,
  type?: StackType | null,
): LayoutDocument {
  if (before === after) return after;
  let layout = after;
  for (const printId of fromTheTop(after)) {
    const lower = printOf(layout, printId);
    const next =
      lower && relaid(layout, settled({ before, layout, type }, lower, printOf(before, printId)), stepUm, type);
    if (!next || next === lower) continue;
    layout = { ...layout, prints: layout.prints.map((print) => (print === lower ? next : print)) };
  }
  return layout;
}

/** The print with what it is under settled: taken up, let go, or its gap as far as it was moved. */
function settled(
  { before, layout, type }: { before: Layout; layout: LayoutDocument; type: StackType | null | undefined },
  lower: Print,
  was: Print | undefined,
): Print {
  if (!was || was.locationId !== lower.locationId) return underUsual(layout, lower);
  if (!lower.below) return lower;
  const upper = printOf(layout, lower.below.printId);
  if (!upper || !canKeepUnder(layout, lower, upper)) return letGo(lower);
  if (was.below?.printId !== lower.below.printId || was.below.gapUm !== lower.below.gapUm) return lower;
  const moved = lower.sizeGroups.find(({ groupId, dropUm }) =>
    was.sizeGroups.some((group) => group.groupId === groupId && group.dropUm !== dropUm),
  );
  const offered = moved && sharedSizes(layout, upper, lower).find((each) => isMember(moved, keyOf(each)));
  if (!offered || printOf(before, upper.printId) !== upper) return lower;
  return { ...lower, below: { ...lower.below, gapUm: Math.max(0, gapOnSize(upper, lower, offered, type)) } };
}

function underUsual(layout: LayoutDocument, print: Print): Print {
  const above = USUALLY_UNDER[print.locationId];
  const upper = layout.prints.find((each) => each.locationId === above && canKeepUnder(layout, print, each));
  if (upper) return { ...print, below: { printId: upper.printId, gapUm: USUAL_GAP_UM } };
  return print.below ? letGo(print) : print;
}

/** The print free of the one above; its drops stay as they are. */
export function letGo({ below: _, ...print }: Print): Print {
  return print;
}
