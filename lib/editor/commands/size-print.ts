import type { Point } from '@/lib/domain/geometry/point';
import type { Print } from '@/lib/domain/layout/document';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { type PlacedPrint, placeArt, readingsFromBox, widthForHeightUm } from '@/lib/domain/layout/placement';
import type { Micrometres } from '@/lib/domain/measure/length';
import { type ChosenPrint, canMovePrint, printInHand, withReadings } from '../chosen-print';
import type { Command } from '../command';
import { type FrameCorner, frameCorners, oppositeCorner } from '../print-frame';
import { heldReadingUm, heldWidthUm } from '../print-limits';
import { type Snap, snappedUm } from '../snapping';

/** The corner that was taken hold of, and where it is dragged to, in the flat's millimetres. */
type ResizePrint = { readonly corner: FrameCorner; readonly toMm: Point; readonly snap: Snap };

/**
 * Drags a corner: the width of the size group follows, proportions kept. What stays put suits the location: the middle
 * where the drop is taken to the middle; the far edge where the print lies on the centre line, so that it stays centred;
 * otherwise the corner across.
 */
export const resizePrint: Command<ResizePrint> = {
  id: 'resizePrint',
  keys: [],
  canRun: canMovePrint,
  run: (state, { corner, toMm, snap }) => {
    const chosen = printInHand(state);
    const { print, group } = chosen;
    const { art } = print.content;
    const placed = placedAt(chosen, group.widthUm);
    const from = frameCorners(art.inkBox, placed.matrix)[corner];
    const fixed = fixedPoint(chosen, placed, corner, from);
    const widthUm = heldWidthUm(art, snappedUm(group.widthUm * growth(fixed, from, toMm), snap));
    if (widthUm === group.widthUm) return state.layout;
    return withReadings(state.layout, chosen, { widthUm, ...keptPut(chosen, placed, fixed, widthUm, snap) });
  },
};

/** Sets how wide the unturned ink is, as typed. */
export const setWidth: Command<{ readonly widthUm: Micrometres }> = {
  id: 'setWidth',
  keys: [],
  canRun: canMovePrint,
  run: (state, { widthUm }) => {
    const chosen = printInHand(state);
    return withReadings(state.layout, chosen, { widthUm: heldWidthUm(chosen.print.content.art, widthUm) });
  },
};

/** Sets how tall the unturned ink is, as typed; the width follows, since proportions are kept. */
export const setHeight: Command<{ readonly heightUm: Micrometres }> = {
  id: 'setHeight',
  keys: [],
  canRun: canMovePrint,
  run: (state, { heightUm }) => {
    const chosen = printInHand(state);
    const { art } = chosen.print.content;
    return withReadings(state.layout, chosen, { widthUm: heldWidthUm(art, widthForHeightUm(art, heightUm)) });
  },
};

/** How much larger the print grows when the corner at `from` is dragged to `to`, seen from the point that stays put. */
function growth(fixed: Point, from: Point, to: Point): number {
  const arm = { x: from.x - fixed.x, y: from.y - fixed.y };
  const length = arm.x * arm.x + arm.y * arm.y;
  return length === 0 ? 1 : ((to.x - fixed.x) * arm.x + (to.y - fixed.y) * arm.y) / length;
}

function fixedPoint({ print, group }: ChosenPrint, placed: PlacedPrint, corner: FrameCorner, from: Point): Point {
  const { x, y, width, height } = placed.inkBox;
  const middle = { x: x + width / 2, y: y + height / 2 };
  if (LOCATIONS[print.locationId].edge === 'middle') return middle;
  if (group.acrossUm === 0) return { x: middle.x, y: from.y >= middle.y ? y : y + height };
  return frameCorners(print.content.art.inkBox, placed.matrix)[oppositeCorner(corner)];
}

/**
 * Drop and across that leave the fixed point where it was. The turned ink's box grows in proportion, so the point keeps
 * its share of it. Readings settle on the step, so the point may give by half a step: readings are what gets pressed.
 */
function keptPut(chosen: ChosenPrint, before: PlacedPrint, fixed: Point, widthUm: Micrometres, snap: Snap) {
  const { print, group, flat } = chosen;
  if (LOCATIONS[print.locationId].edge === 'middle') return {};
  const old = before.inkBox;
  const grown = placedAt(chosen, widthUm).inkBox;
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

function placedAt(
  { print, group, flat }: { print: Print; group: ChosenPrint['group']; flat: ChosenPrint['flat'] },
  widthUm: Micrometres,
): PlacedPrint {
  return placeArt(print.content.art, print.turnCentideg, { ...group, widthUm }, print.locationId, flat);
}
