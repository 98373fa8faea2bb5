import { z } from 'zod';

/** How many garments one line may ask for; above it somebody mistyped (common practice, no source). */
export const MOST_OF_ONE_ITEM = 10_000;

/** As many people as a list can have, and columns of words about them (common practice, no source). */
export const MOST_PEOPLE = 2_000;
export const MOST_COLUMNS = 20;

/** As much as the name of a column can say, and as one cell can hold, in UTF-16 units. */
export const LONGEST_COLUMN_NAME = 60;
export const LONGEST_FIELD = 200;

/** What a column holds, as far as its checks go. A column says nothing of it where it is words of any kind. */
export const COLUMN_KINDS = ['name', 'number', 'group', 'year', 'text'] as const;
export type ColumnKind = (typeof COLUMN_KINDS)[number];

/** One garment a person gets. */
export const itemSchema = z.object({
  itemId: z.string().min(1),
  garmentId: z.string().min(1),
  blankId: z.string().min(1),
  sizeId: z.string().min(1),
  quantity: z.number().int().min(1).max(MOST_OF_ONE_ITEM),
});

/** One line of the roster. Every field is text, numbers too: `0` and `00` are different numbers. */
export const personSchema = z.object({
  personId: z.string().min(1),
  fields: z.record(z.string(), z.string()),
  items: z.array(itemSchema),
});
export type Person = z.infer<typeof personSchema>;

/** A column of the roster; lettering names it by its id. */
export const columnSchema = z.object({
  columnId: z.string().regex(/^[a-z0-9][a-z0-9-]{0,63}$/),
  name: z.string().min(1).max(LONGEST_COLUMN_NAME),
  kind: z.enum(COLUMN_KINDS).optional(),
});
export type Column = z.infer<typeof columnSchema>;

/** The roster part of a layout document: its columns, and one entry a person. */
export const peopleSchema = z.object({
  columns: z.array(columnSchema).max(MOST_COLUMNS),
  lines: z.array(personSchema).max(MOST_PEOPLE),
});
export type People = z.infer<typeof peopleSchema>;
