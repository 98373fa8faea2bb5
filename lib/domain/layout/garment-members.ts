import type { Garment, LayoutDocument, SizeKey } from './document';

/** The layout with one garment edited; the same garments where it has none of this id. */
export function withGarment(
  layout: LayoutDocument,
  garmentId: string,
  edit: (garment: Garment) => Garment,
): LayoutDocument {
  return {
    ...layout,
    garments: layout.garments.map((garment) => (garment.garmentId === garmentId ? edit(garment) : garment)),
  };
}

/** The layout's prints without these sizes, and without the size groups that held no other. */
export function withoutMembers(layout: LayoutDocument, isGone: (key: SizeKey) => boolean): LayoutDocument {
  return {
    ...layout,
    prints: layout.prints.map((print) => {
      if (!print.sizeGroups.some(({ members }) => members.some(isGone))) return print;
      const groups = print.sizeGroups.map((group) => ({
        ...group,
        members: group.members.filter((member) => !isGone(member)),
      }));
      return { ...print, sizeGroups: groups.filter(({ members }) => members.length > 0) };
    }),
  };
}

/** The layout with sizes under other names in every size group, count and person's item. */
export function withRenamedSizes(
  layout: LayoutDocument,
  named: <Key extends SizeKey>(key: Key) => Key,
): LayoutDocument {
  return {
    ...layout,
    garments: layout.garments.map((garment) => ({ ...garment, counts: garment.counts.map((count) => named(count)) })),
    prints: layout.prints.map((print) => ({
      ...print,
      sizeGroups: print.sizeGroups.map((group) => ({ ...group, members: group.members.map((key) => named(key)) })),
    })),
    people: {
      ...layout.people,
      lines: layout.people.lines.map((line) => ({ ...line, items: line.items.map((item) => named(item)) })),
    },
  };
}

/** Whether anybody is to get one of these sizes of a garment, by counts or by name. */
export function isOrdered(
  { people }: Pick<LayoutDocument, 'people'>,
  { counts }: Pick<Garment, 'counts'>,
  is: (key: SizeKey) => boolean,
): boolean {
  return counts.some((count) => count.quantity > 0 && is(count)) || people.lines.some(({ items }) => items.some(is));
}
