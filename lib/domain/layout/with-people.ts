import { fieldsIn } from '../lettering/lettering-text';
import type { GarmentOnOffer, ListLine, PeopleList } from '../people/list';
import { isBlankLine } from '../people/list';
import { listCounts } from '../people/list-counts';
import type { Person } from '../people/person';
import type { LayoutDocument, SizeCount } from './document';
import { keyOf, type OfferedSize, offeredSizes, sameSize } from './sizes';

/** How a size is said, so that no other size of the garment is said the same. */
export type SizeSaid = (offered: OfferedSize, others: readonly OfferedSize[]) => string;

/** The garments people of a list can get, with what was counted of each by hand. */
export function garmentsOnOffer(layout: Pick<LayoutDocument, 'garments'>, say: SizeSaid): GarmentOnOffer[] {
  return layout.garments.map((garment) => {
    const offered = offeredSizes(garment);
    return {
      garmentId: garment.garmentId,
      name: garment.name,
      sizes: offered.map((each) => ({
        ...keyOf(each),
        label: each.size.label,
        ageBand: each.blank.ageBand,
        words: say(
          each,
          offered.filter((other) => other !== each),
        ),
      })),
      ordered: garment.counts,
    };
  });
}

/**
 * The layout with the people of a list in it, and its counts those the list comes to. Without anybody on the list the
 * counts stay those made by hand. Garments somebody was to get and that are no longer offered count nowhere.
 */
export function withPeople(
  layout: LayoutDocument,
  list: Pick<PeopleList, 'columns' | 'settings' | 'lines'>,
): LayoutDocument {
  const lines = list.lines.filter((line) => !isBlankLine(line));
  if (lines.length === 0) return { ...layout, people: { columns: [...list.columns], lines: [] } };
  const garments = garmentsOnOffer(layout, ({ size }) => size.label);
  const counts = listCounts(lines, list.settings.spares, garments);
  return {
    ...layout,
    people: { columns: [...list.columns], lines: lines.map((line) => personOf(line, garments)) },
    garments: layout.garments.map((garment) => ({
      ...garment,
      counts: offeredSizes(garment)
        .map(keyOf)
        .flatMap((key): SizeCount[] => {
          const count = counts.find((each) => each.garmentId === garment.garmentId && sameSize(each, key));
          return count ? [{ ...key, quantity: count.quantity }] : [];
        }),
    })),
  };
}

/**
 * An edited layout as it is stored: without its people, who are kept by themselves, and where there are any with the counts
 * made by hand as `before` has them, as far as their sizes are still offered.
 */
export function withoutPeople(edited: LayoutDocument, before: LayoutDocument, hasPeople: boolean): LayoutDocument {
  const people = { columns: [], lines: [] };
  if (!hasPeople) return { ...edited, people };
  return {
    ...edited,
    people,
    garments: edited.garments.map((garment) => {
      const counted = before.garments.find(({ garmentId }) => garmentId === garment.garmentId)?.counts ?? [];
      const keys = offeredSizes(garment).map(keyOf);
      return { ...garment, counts: counted.filter((count) => keys.some((key) => sameSize(key, count))) };
    }),
  };
}

/** The columns of the list that lettering of the layout prints. */
export function letteredColumns({ prints }: Pick<LayoutDocument, 'prints'>): string[] {
  const fields = prints.flatMap(({ content }) =>
    content.kind === 'lettering' ? fieldsIn(content.lettering.lines) : [],
  );
  return [...new Set(fields)];
}

function personOf({ personId, fields, items }: ListLine, garments: readonly GarmentOnOffer[]): Person {
  const offered = items.flatMap(({ itemId, garmentId, size, quantity }) => {
    const garment = garments.find((each) => each.garmentId === garmentId);
    if (!(garment && size && garment.sizes.some((each) => sameSize(each, size)))) return [];
    return [{ itemId, garmentId, blankId: size.blankId, sizeId: size.sizeId, quantity }];
  });
  const filled = Object.fromEntries(Object.entries(fields).filter(([, text]) => text !== ''));
  return { personId, fields: filled, items: offered };
}
