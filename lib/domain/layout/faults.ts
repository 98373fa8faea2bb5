import type { GarmentBlank, LayoutDocument } from './document';
import { keyOf, offeredSizes, sameSize } from './sizes';

export type LayoutFault =
  | 'repeatedId'
  | 'unknownGarment'
  | 'unknownSize'
  | 'repeatedCount'
  | 'sizeWithoutGroup'
  | 'sizeInTwoGroups'
  | 'letterHeight';

/**
 * The first way in which a document does not hold together, or null for a whole one: ids used once, prints, counts and
 * photographs on garments and sizes that exist, every size of a printed garment in exactly one size group, a letter height
 * in those of lettering and in no others.
 */
export function layoutFault(layout: LayoutDocument): LayoutFault | null {
  const blanks = layout.garments.flatMap((garment) => garment.blanks);
  const ids = [
    ...layout.garments.map(({ garmentId }) => garmentId),
    ...blanks.map(({ blankId }) => blankId),
    ...layout.prints.flatMap(({ printId, sizeGroups }) => [printId, ...sizeGroups.map(({ groupId }) => groupId)]),
  ];
  if (new Set(ids).size !== ids.length) return 'repeatedId';
  if (blanks.some(({ sizes }) => new Set(sizes.map(({ sizeId }) => sizeId)).size !== sizes.length)) return 'repeatedId';
  if (blanks.some(isPhotographedInNoSize)) return 'unknownSize';
  return countFault(layout) ?? firstOf(layout.prints.map((print) => printFault(layout, print)));
}

function isPhotographedInNoSize({ sizes, photographs = [] }: GarmentBlank): boolean {
  return photographs.some((photograph) => !sizes.some(({ sizeId }) => sizeId === photograph.sizeId));
}

function countFault({ garments }: Pick<LayoutDocument, 'garments'>): LayoutFault | null {
  for (const garment of garments) {
    const keys = offeredSizes(garment).map(keyOf);
    if (garment.counts.some((count) => !keys.some((key) => sameSize(key, count)))) return 'unknownSize';
    if (garment.counts.some((count, index) => garment.counts.findIndex((other) => sameSize(other, count)) !== index))
      return 'repeatedCount';
  }
  return null;
}

function printFault(layout: LayoutDocument, print: LayoutDocument['prints'][number]): LayoutFault | null {
  const printed = layout.garments.filter(({ garmentId }) => print.garmentIds.includes(garmentId));
  if (printed.length !== new Set(print.garmentIds).size || printed.length !== print.garmentIds.length)
    return 'unknownGarment';
  const isLettering = print.content.kind === 'lettering';
  if (print.sizeGroups.some(({ capHeightUm }) => (capHeightUm !== undefined) !== isLettering)) return 'letterHeight';
  const keys = printed.flatMap((garment) => offeredSizes(garment).map(keyOf));
  const members = print.sizeGroups.flatMap((group) => group.members);
  if (members.some((member) => !keys.some((key) => sameSize(key, member)))) return 'unknownSize';
  if (members.some((member, index) => members.findIndex((other) => sameSize(other, member)) !== index))
    return 'sizeInTwoGroups';
  return keys.every((key) => members.some((member) => sameSize(member, key))) ? null : 'sizeWithoutGroup';
}

function firstOf(faults: readonly (LayoutFault | null)[]): LayoutFault | null {
  return faults.find((fault) => fault !== null) ?? null;
}
