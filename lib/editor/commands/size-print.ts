import type { Point } from '@/lib/domain/geometry/point';
import type { PrintContent, SizeGroup } from '@/lib/domain/layout/document';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { type PlacedPrint, placeAt, readingsFromBox, widthForHeightUm } from '@/lib/domain/layout/placement';
import { startingInk } from '@/lib/domain/layout/starting-groups';
import type { SetType } from '@/lib/domain/layout/type-case';
import { blockHeight } from '@/lib/domain/lettering/set-lettering';
import type { Micrometres } from '@/lib/domain/measure/length';
import { type ChosenPrint, canMovePrint, printInHand, withReadings } from '../chosen-print';
import { type Command, shownType } from '../command';
import { type FrameCorner, frameCorners, oppositeCorner } from '../print-frame';
import { heldLettersUm, heldReadingUm, heldWidthUm } from '../print-limits';
import { type Snap, snappedUm } from '../snapping';

/** The corner that was taken hold of, and where it is dragged to, in the flat's millimetres. */
type ResizePrint = { readonly corner: FrameCorner; readonly toMm: Point; readonly snap: Snap };

/**
 * Drags a corner: the width of the size group follows, of lettering its letter height, proportions kept. What stays put suits the location: the middle
 * where the drop is taken to the middle; the far edge where the print lies on the centre line, so that it stays centred;
 * otherwise the corner across.
 */
export const resizePrint: Command<ResizePrint> = {
  id: 'resizePrint',
  keys: [],
  canRun: canMovePrint,
  run: (state, { corner, toMm, snap }) => {
    const chosen = printInHand(state);
    const setType = shownType(state);
    const { print, group } = chosen;
    const placed = placeAt(print, group, chosen.flat, setType);
    const from = frameCorners(placed.frame, placed.matrix)[corner];
    const fixed = fixedPoint(chosen, placed, corner, from);
    const size = grownSize(print.content, group, growth(fixed, from, toMm), snap);
    if (size.widthUm === group.widthUm && size.capHeightUm === group.capHeightUm) return state.layout;
    return withReadings(state.layout, chosen, { ...size, ...keptPut(chosen, placed, fixed, { size, snap, setType }) });
  },
};

/** Sets how wide the unturned ink is, or the most that lettering may take across, as typed. */
export const setWidth: Command<{ readonly widthUm: Micrometres }> = {
  id: 'setWidth',
  keys: [],
  canRun: canMovePrint,
  run: (state, { widthUm }) => {
    const chosen = printInHand(state);
    return withReadings(state.layout, chosen, { widthUm: heldWidthUm(startingInk(chosen.print.content), widthUm) });
  },
};

/** Sets how tall the unturned ink is, as typed; the width follows, since proportions are kept. */
export const setHeight: Command<{ readonly heightUm: Micrometres }> = {
  id: 'setHeight',
  keys: [],
  canRun: canMovePrint,
  run: (state, { heightUm }) => {
    const chosen = printInHand(state);
    const { content } = chosen.print;
    if (content.kind === 'lettering') {
      const capHeightUm = heldLettersUm(heightUm / blockHeight(content.lettering, 1));
      return withReadings(state.layout, chosen, { capHeightUm });
    }
    const { art } = content;
    return withReadings(state.layout, chosen, { widthUm: heldWidthUm(art, widthForHeightUm(art, heightUm)) });
  },
};

/** Sets how tall the letters are, as typed. */
export const setLetterHeight: Command<{ readonly capHeightUm: Micrometres }> = {
  id: 'setLetterHeight',
  keys: [],
  canRun: (state) => canMovePrint(state) && printInHand(state).print.content.kind === 'lettering',
  run: (state, { capHeightUm }) =>
    withReadings(state.layout, printInHand(state), { capHeightUm: heldLettersUm(capHeightUm) }),
};

/** What of a size group a drag of a corner changes. */
type Size = Pick<SizeGroup, 'widthUm' | 'capHeightUm'>;

function grownSize(content: PrintContent, { widthUm, capHeightUm }: Size, by: number, snap: Snap): Size {
  if (content.kind === 'art') return { widthUm: heldWidthUm(content.art, snappedUm(widthUm * by, snap)) };
  return { widthUm, capHeightUm: heldLettersUm(snappedUm((capHeightUm ?? 0) * by, snap)) };
}

/** How much larger the print grows when the corner at `from` is dragged to `to`, seen from the point that stays put. */
function growth(fixed: Point, from: Point, to: Point): number {
  const arm = { x: from.x - fixed.x, y: from.y - fixed.y };
  const length = arm.x * arm.x + arm.y * arm.y;
  return length === 0 ? 1 : ((to.x - fixed.x) * arm.x + (to.y - fixed.y) * arm.y) / length;
}

function fixedPoint({ print, group }: ChosenPrint, placed: PlacedPrint, corner: FrameCorner, from: Point): Point {
  const { x, y, width, height } = placed.readBox;
  const middle = { x: x + width / 2, y: y + height / 2 };
  if (LOCATIONS[print.locationId].edge === 'middle') return middle;
  if (group.acrossUm === 0) return { x: middle.x, y: from.y >= middle.y ? y : y + height };
  return frameCorners(placed.frame, placed.matrix)[oppositeCorner(corner)];
}

/**
 * Drop and across that leave the fixed point where it was. The turned ink's box grows in proportion, so the point keeps
 * its share of it. Readings settle on the step, so the point may give by half a step: readings are what gets pressed.
 */
function keptPut(
  chosen: ChosenPrint,
  before: PlacedPrint,
  fixed: Point,
  { size, snap, setType }: { size: Size; snap: Snap; setType: SetType | undefined },
) {
  const { print, group, flat } = chosen;
  if (LOCATIONS[print.locationId].edge === 'middle') return {};
  const old = before.readBox;
  const grown = placeAt(print, { ...group, ...size }, flat, setType).readBox;
  const shareX = (fixed.x - old.x) / old.width;
  const shareY = (fixed.y - old.y) / old.height;
  const box = { ...grown, x: fixed.x - shareX * grown.width, y: fixed.y - shareY * grown.height };
  const { dropUm, acrossUm } = readingsFromBox(box, print.locationId, flat);
  const settled = (um: Micrometres, was: Micrometres) =>
    Math.abs(um - was) <= 1 ? was : heldReadingUm(snappedUm(um, snap));
  return {
    dropUm: settled(dropUm, group.dropUm),
    acrossUm: group.acrossUm === 0 ? 0 : settled(acrossUm, group.acrossUm),
  };
}
