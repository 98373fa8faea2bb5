import { type Micrometres, umFromMm } from '../measure/length';
import { MOST_SIZE_GROUPS, type Print, type SizeGroup, type SizeKey } from './document';
import { placeAt } from './placement';
import { flatOf, placedPrint } from './scene';
import { groupsReadAlike } from './size-group-suggestion';
import { groupFor, keyOf, type OfferedSize, offeredSizes, sameSize } from './sizes';
import { type Layout, printOf } from './stack-order';
import type { TypeCase } from './type-case';

/** What lettering of a stack is set with: samples, and whoever of the list takes the most room. */
export type StackType = Pick<TypeCase, 'sample' | 'longest'>;

/** How far the lower print's ink begins under the upper's foot on one size; negative where it begins above. Micrometres. */
export function gapOnSize(upper: Print, lower: Print, offered: OfferedSize, type?: StackType | null): Micrometres {
  const { top, foot } = edgesOnSize(upper, lower, offered, groupFor(lower, keyOf(offered)).dropUm, type);
  return umFromMm(top - foot);
}

/** The print with its drops where its upper's foot and its gap have them on every size. */
export function relaid(layout: Layout, lower: Print, stepUm: Micrometres, type?: StackType | null): Print {
  const { below } = lower;
  const upper = below && printOf(layout, below.printId);
  if (!(below && upper)) return lower;
  const sizes = sharedSizes(layout, upper, lower);
  const dropOn = (group: SizeGroup, key: SizeKey): Micrometres => {
    const offered = sizes.find((each) => sameSize(keyOf(each), key));
    if (!offered) return group.dropUm;
    const { top, foot } = edgesOnSize(upper, lower, offered, group.dropUm, type);
    const um = group.dropUm + umFromMm(foot - top) + below.gapUm;
    return Math.abs(um - group.dropUm) <= stepUm / 2 ? group.dropUm : Math.round(um / stepUm) * stepUm + 0;
  };
  const split = lower.sizeGroups.flatMap((group) => splitByDrop(group, dropOn));
  const sizeGroups = named(groupsReadAlike(split));
  if (sizeGroups.length > MOST_SIZE_GROUPS) return lower;
  return saySame(sizeGroups, lower.sizeGroups) ? lower : { ...lower, sizeGroups };
}

function splitByDrop(group: SizeGroup, dropOn: (group: SizeGroup, key: SizeKey) => Micrometres): SizeGroup[] {
  const byDrop = new Map<Micrometres, SizeKey[]>();
  for (const key of group.members) {
    const dropUm = dropOn(group, key);
    byDrop.set(dropUm, [...(byDrop.get(dropUm) ?? []), key]);
  }
  return [...byDrop].map(([dropUm, members]) => ({ ...group, members, dropUm }));
}

/** Groups split from one take its name and a number, so that the same edit always gives the same names. */
function named(groups: readonly SizeGroup[]): SizeGroup[] {
  const taken = new Set<string>();
  return groups.map((group) => {
    const base = group.groupId.split('~')[0] ?? group.groupId;
    let groupId = group.groupId;
    for (let number = 2; taken.has(groupId); number += 1) groupId = `${base}~${number}`;
    taken.add(groupId);
    return groupId === group.groupId ? group : { ...group, groupId };
  });
}

function saySame(a: readonly SizeGroup[], b: readonly SizeGroup[]): boolean {
  return (
    a.length === b.length &&
    a.every((group, index) => {
      const other = b[index];
      return (
        group.dropUm === other?.dropUm &&
        group.members.length === other.members.length &&
        group.members.every((key) => isMember(other, key))
      );
    })
  );
}

/**
 * Where the upper's ink ends and the lower's begins on one size, mm down the flat; of lettering, where its capitals do. A long
 * name that is set lower must not draw the number up for everybody, and the ends of a long arched one must clear it.
 */
function edgesOnSize(upper: Print, lower: Print, offered: OfferedSize, dropUm: Micrometres, type?: StackType | null) {
  const flat = flatOf(offered.blank.kind, offered.size, lower.side);
  const key = keyOf(offered);
  const isLettered = upper.content.kind === 'lettering';
  const foots = (isLettered ? [type?.sample, type?.longest] : [undefined]).map((setType) => {
    const { readBox } = placedPrint(upper, key, flat, setType);
    return readBox.y + readBox.height;
  });
  const readings = { ...groupFor(lower, key), dropUm };
  const { readBox } = placeAt(lower, readings, flat, type?.sample);
  return { foot: Math.max(...foots), top: readBox.y };
}

/** The sizes of the garments that both prints are on. */
export function sharedSizes({ garments }: Layout, upper: Print, lower: Print): OfferedSize[] {
  return garments
    .filter(({ garmentId }) => upper.garmentIds.includes(garmentId) && lower.garmentIds.includes(garmentId))
    .flatMap(offeredSizes);
}

/** Whether a group holds a size. */
export function isMember({ members }: Pick<SizeGroup, 'members'>, key: SizeKey): boolean {
  return members.some((member) => sameSize(member, key));
}
