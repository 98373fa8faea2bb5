import { z } from 'zod';
import type { AgeBand } from '../garment/kinds';
import { type Column, columnSchema, LONGEST_FIELD, MOST_COLUMNS, MOST_OF_ONE_ITEM } from './person';

/** As much as can be written about why something is meant so. */
export const LONGEST_REASON = 200;

/** As many garments as one person's line can name. */
export const MOST_ITEMS = 40;

const id = z.string().min(1).max(64);

/**
 * One garment of a line of the working copy. `size` is null while no size of the garment could be read from what was
 * written; `typed` then holds the writing, and is empty otherwise.
 */
export const listItemSchema = z.object({
  itemId: id,
  garmentId: id,
  size: z.object({ blankId: id, sizeId: id }).nullable(),
  typed: z.string().max(LONGEST_FIELD),
  quantity: z.number().int().min(1).max(MOST_OF_ONE_ITEM),
});
export type ListItem = z.infer<typeof listItemSchema>;

/** A finding that was answered "meant so". It holds for as long as `about`, what it was said of, stays the same. */
export const meantSchema = z.object({
  code: z.string().max(40),
  place: z.string().max(130),
  about: z.string().max(2_000),
  why: z.string().min(1).max(LONGEST_REASON),
});
export type Meant = z.infer<typeof meantSchema>;

export const fieldsSchema = z.record(z.string().max(64), z.string().max(LONGEST_FIELD));

/** One line of the working copy of the list. `version` rises with every change to it. */
export const listLineSchema = z.object({
  personId: id,
  fields: fieldsSchema,
  items: z.array(listItemSchema).max(MOST_ITEMS),
  meant: z.array(meantSchema).max(100),
  version: z.number().int().min(1),
  /** Who said that the line as it stands is right, and when (ISO 8601); null while nobody has. */
  confirmed: z.object({ by: z.string(), at: z.string() }).nullable(),
});
export type ListLine = z.infer<typeof listLineSchema>;

/** Garments of one size that are made for nobody in particular. */
export const spareSchema = z.object({
  garmentId: id,
  blankId: id,
  sizeId: id,
  quantity: z.number().int().min(1).max(MOST_OF_ONE_ITEM),
});
export type Spare = z.infer<typeof spareSchema>;

/** How a list is kept. */
export const listSettingsSchema = z.object({
  /** Within what one number may stand once: one garment, or one value of the columns that group people. */
  numberOnceWithin: z.enum(['garment', 'group']),
  /** Whether nothing is sent before every line was confirmed. */
  confirmEach: z.boolean(),
  spares: z.array(spareSchema).max(500),
  /** What is meant so of the list as a whole. */
  meant: z.array(meantSchema).max(100),
});
export type ListSettings = z.infer<typeof listSettingsSchema>;

export const columnsSchema = z.array(columnSchema).max(MOST_COLUMNS);

/** The working copy of a job's list of people, in its order. `version` rises with every change to any part of it. */
export type PeopleList = {
  readonly version: number;
  readonly columns: readonly Column[];
  readonly settings: ListSettings;
  readonly lines: readonly ListLine[];
};

/** The columns every list begins with. */
export const STARTING_COLUMNS: readonly Column[] = [
  { columnId: 'name', name: 'Name', kind: 'name' },
  { columnId: 'number', name: 'Number', kind: 'number' },
];

export const STARTING_SETTINGS: ListSettings = {
  numberOnceWithin: 'garment',
  confirmEach: false,
  spares: [],
  meant: [],
};

/** A list nobody has written in. */
export const EMPTY_LIST: PeopleList = { version: 0, columns: STARTING_COLUMNS, settings: STARTING_SETTINGS, lines: [] };

/** A size of a garment as a list can ask for it; `words` is how it is said: `Youth M`. */
export type SizeOnOffer = {
  readonly blankId: string;
  readonly sizeId: string;
  readonly label: string;
  readonly ageBand: AgeBand;
  readonly words: string;
};

/** A garment people can get; `ordered` is what was counted by hand, and may be empty. */
export type GarmentOnOffer = {
  readonly garmentId: string;
  readonly name: string;
  readonly sizes: readonly SizeOnOffer[];
  readonly ordered: readonly { readonly blankId: string; readonly sizeId: string; readonly quantity: number }[];
};

/** Where on a line a person's sizes of a garment stand; fields stand in the place named by their column's id. */
export function sizePlace(garmentId: string): string {
  return `size/${garmentId}`;
}

/** The garment whose sizes stand in a place; null where it is a field's. */
export function garmentOfPlace(place: string): string | null {
  return place.startsWith('size/') ? place.slice('size/'.length) : null;
}

/** True when a garment is offered in the size. */
export function offersSize(garment: GarmentOnOffer, size: { blankId: string; sizeId: string } | null): boolean {
  return (
    size !== null && garment.sizes.some(({ blankId, sizeId }) => blankId === size.blankId && sizeId === size.sizeId)
  );
}

/** A line nobody has written anything on. */
export function isBlankLine({ fields, items }: Pick<ListLine, 'fields' | 'items'>): boolean {
  return items.length === 0 && Object.values(fields).every((text) => text === '');
}
