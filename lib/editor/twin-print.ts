import type { LayoutDocument, Print, SizeGroup } from '@/lib/domain/layout/document';
import { readAlike } from '@/lib/domain/layout/group-readings';
import { showsTheSame } from '@/lib/domain/layout/print-content';
import { sameSize } from '@/lib/domain/layout/sizes';
import { MOST_PRINTS } from './print-limits';
import { nextName } from './print-name';

/** Where a second print of the same picture lies: what differs from the print it is taken from. Group ids are fresh ones. */
export type TwinPlace = Pick<Print, 'garmentIds' | 'side' | 'locationId' | 'turnCentideg' | 'sizeGroups'>;

/**
 * The layout with the same picture once more at another place. Where exactly those garments have that picture at that
 * location already, that print is brought to the same readings instead, so that doing it again adds nothing.
 */
export function withTwin(layout: LayoutDocument, print: Print, place: TwinPlace, printId: string): LayoutDocument {
  const there = layout.prints.find((each) => each !== print && isTwin(each, print, place));
  if (!there) {
    if (layout.prints.length >= MOST_PRINTS) return layout;
    const twin = { ...place, printId, name: twinName(layout, print, place), content: print.content };
    return { ...layout, prints: [...layout.prints, twin] };
  }
  if (there.turnCentideg === place.turnCentideg && readTheSame(there.sizeGroups, place.sizeGroups)) return layout;
  const { turnCentideg, sizeGroups } = place;
  const mended = { ...there, turnCentideg, sizeGroups };
  return { ...layout, prints: layout.prints.map((each) => (each === there ? mended : each)) };
}

function isTwin(each: Print, print: Print, { garmentIds, locationId }: TwinPlace): boolean {
  const sameGarments =
    each.garmentIds.length === garmentIds.length &&
    garmentIds.every((garmentId) => each.garmentIds.includes(garmentId));
  return sameGarments && each.locationId === locationId && showsTheSame(each.content, print.content);
}

/** Two prints on one garment are told apart by name; on different garments they may be called the same. */
function twinName(layout: LayoutDocument, print: Print, { garmentIds }: TwinPlace): string {
  const beside = layout.prints.filter((each) => each.garmentIds.some((garmentId) => garmentIds.includes(garmentId)));
  return beside.some(({ name }) => name === print.name) ? nextName(print.name, layout.prints) : print.name;
}

/** Whether two sets of size groups say the same of every size, whatever their ids. */
function readTheSame(a: readonly SizeGroup[], b: readonly SizeGroup[]): boolean {
  const covers = (from: readonly SizeGroup[], to: readonly SizeGroup[]) =>
    from.every(({ members, ...readings }) =>
      members.every((member) =>
        to.some((group) => readAlike(group, readings) && group.members.some((other) => sameSize(other, member))),
      ),
    );
  return a.length === b.length && covers(a, b) && covers(b, a);
}
