import { convexOverlap } from '../geometry/convex-overlap';
import type { Point } from '../geometry/point';
import { type Micrometres, umFromMm } from '../measure/length';
import type { Garment, LayoutDocument, Print, SizeKey } from './document';
import { flatOf, placedPrint, printsOn } from './scene';
import { keyOf, type OfferedSize, sizesToShow } from './sizes';
import type { SetType } from './type-case';

/** Prints that reach into each other by less than this touch and no more, mm: a hand places to 1/2 in (by eye). */
const TOUCHES_MM = 1;

/** Two prints of a side lie over each other on a size: where on the flat (mm), and by how much. */
export type OverlapOnSize = { readonly at: Point; readonly um: Micrometres };

/** A print that another lies over, on these sizes of a garment, by so much at the most. */
export type PrintOverlap = {
  readonly other: Print;
  readonly sizes: readonly SizeKey[];
  readonly mostUm: Micrometres;
};

/**
 * How two prints lie over each other on one size, by their turned ink outlines; null where they are clear. The outlines
 * are convex: of a picture that goes round another it is said although their ink may not meet.
 */
export function overlapOnSize(
  print: Print,
  other: Print,
  offered: OfferedSize,
  setType?: SetType,
): OverlapOnSize | null {
  const [size, flat] = [keyOf(offered), flatOf(offered.blank.kind, offered.size, print.side)];
  const found = convexOverlap(
    placedPrint(print, size, flat, setType).inkOutline,
    placedPrint(other, size, flat, setType).inkOutline,
  );
  return found && found.depth > TOUCHES_MM ? { at: found.at, um: umFromMm(found.depth) } : null;
}

/** The prints of its side that a print lies over or under, on the ordered sizes of a garment it is on. */
export function printOverlaps(
  layout: Pick<LayoutDocument, 'prints'>,
  garment: Garment,
  print: Print,
  setType?: SetType,
): PrintOverlap[] {
  const { garmentId } = garment;
  const others = printsOn(layout, { garmentId, side: print.side }).filter(({ printId }) => printId !== print.printId);
  const offered = sizesToShow(garment);
  return others.flatMap((other) => {
    const found = offered.flatMap((each) => {
      const overlap = overlapOnSize(print, other, each, setType);
      return overlap ? [{ size: keyOf(each), um: overlap.um }] : [];
    });
    if (found.length === 0) return [];
    return [{ other, sizes: found.map(({ size }) => size), mostUm: Math.max(...found.map(({ um }) => um)) }];
  });
}
