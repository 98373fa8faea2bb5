import type { Garment, LayoutDocument, Print, SizeGroup } from '@/lib/domain/layout/document';
import { readAlike } from '@/lib/domain/layout/group-readings';
import { sameSize } from '@/lib/domain/layout/sizes';
import { startingGroups, startingInk } from '@/lib/domain/layout/starting-groups';
import { canEditPrint, printInHand, withPrint } from '../chosen-print';
import type { Command } from '../command';

/** The garments the print is to be on, and a fresh id for each size group that comes of it. */
type SetGarments = { readonly garmentIds: readonly string[]; readonly newId: () => string };

/**
 * Puts the print on exactly these garments: sizes newly covered get the starting values of its location, joining a size
 * group that reads the same; sizes no longer covered leave theirs. Garments its location does not suit are left out; with
 * none left nothing changes, since a print is always on one.
 */
export const setGarments: Command<SetGarments> = {
  id: 'setGarments',
  keys: [],
  canRun: canEditPrint,
  run: ({ layout, ...state }, { garmentIds, newId }) => {
    const { print } = printInHand({ layout, ...state });
    const covered = layout.garments.filter(
      (garment) => garmentIds.includes(garment.garmentId) && (isOn(print, garment) || suits(print, garment)),
    );
    const same = covered.length === print.garmentIds.length && covered.every((garment) => isOn(print, garment));
    if (covered.length === 0 || same) return layout;
    return withPrint(layout, print.printId, (each) => ({
      ...each,
      garmentIds: covered.map(({ garmentId }) => garmentId),
      sizeGroups: groupsFor(each, covered, newId),
    }));
  },
};

/** The garments of a layout that a print is on or could be on: those its location suits. */
export function garmentsSuiting(layout: Pick<LayoutDocument, 'garments'>, print: Print): Garment[] {
  return layout.garments.filter((garment) => isOn(print, garment) || suits(print, garment));
}

function isOn({ garmentIds }: Pick<Print, 'garmentIds'>, { garmentId }: Pick<Garment, 'garmentId'>): boolean {
  return garmentIds.includes(garmentId);
}

function suits({ locationId, content }: Print, garment: Garment): boolean {
  return startingGroups(locationId, [garment], startingInk(content), () => 'unused') !== null;
}

function groupsFor(print: Print, covered: readonly Garment[], newId: () => string): SizeGroup[] {
  const blankIds = new Set(covered.flatMap(({ blanks }) => blanks.map(({ blankId }) => blankId)));
  const kept = print.sizeGroups
    .map((group) => ({ ...group, members: group.members.filter(({ blankId }) => blankIds.has(blankId)) }))
    .filter(({ members }) => members.length > 0);
  const fresh = covered.filter((garment) => !isOn(print, garment));
  const started = startingGroups(print.locationId, fresh, startingInk(print.content), newId) ?? [];
  return started.reduce(joined, kept);
}

/** The groups with one more, whose sizes join a group of the same readings where there is one. */
function joined(groups: SizeGroup[], added: SizeGroup): SizeGroup[] {
  const there = groups.find((group) => readAlike(group, added));
  if (!there) return [...groups, added];
  const members = [
    ...there.members,
    ...added.members.filter((key) => !there.members.some((has) => sameSize(has, key))),
  ];
  return groups.map((group) => (group === there ? { ...group, members } : group));
}
