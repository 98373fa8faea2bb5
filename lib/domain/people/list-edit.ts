import { z } from 'zod';
import {
  columnsSchema,
  fieldsSchema,
  LONGEST_REASON,
  listItemSchema,
  listSettingsSchema,
  MOST_ITEMS,
  meantSchema,
} from './list';
import { LONGEST_FIELD, MOST_OF_ONE_ITEM } from './person';

const id = z.string().min(1).max(64);
const items = z.array(listItemSchema).max(MOST_ITEMS);

/**
 * One change to a list. Each says what it was made from, so that it can be told whether somebody else was there first:
 * `was` is what a cell said, `seen` the content of a whole line (`lineContent`).
 */
export const listEditSchema = z.discriminatedUnion('edit', [
  z.object({
    edit: z.literal('add'),
    line: z.object({ personId: id, fields: fieldsSchema, items, meant: z.array(meantSchema).max(100) }),
    /** The line it stands before; null for the end of the list. */
    before: id.nullable(),
  }),
  z.object({
    edit: z.literal('field'),
    personId: id,
    columnId: id,
    was: z.string().max(LONGEST_FIELD),
    text: z.string().max(LONGEST_FIELD),
  }),
  z.object({ edit: z.literal('items'), personId: id, garmentId: id, was: items, items }),
  z.object({ edit: z.literal('remove'), personId: id, seen: z.string() }),
  z.object({
    edit: z.literal('meant'),
    /** Null for the list as a whole. */
    personId: id.nullable(),
    meant: meantSchema.extend({ why: z.string().max(LONGEST_REASON).nullable() }),
  }),
  z.object({ edit: z.literal('confirm'), personId: id, seen: z.string(), confirmed: z.boolean() }),
  z.object({ edit: z.literal('columns'), was: columnsSchema, columns: columnsSchema }),
  z.object({
    edit: z.literal('settings'),
    settings: listSettingsSchema.pick({ numberOnceWithin: true, confirmEach: true }),
  }),
  z.object({
    edit: z.literal('spare'),
    garmentId: id,
    blankId: id,
    sizeId: id,
    quantity: z.number().int().min(0).max(MOST_OF_ONE_ITEM),
  }),
]);
export type ListEdit = z.infer<typeof listEditSchema>;

/** As many changes as come at once: a whole list pasted, or taken back. */
export const MOST_EDITS = 45_000;
export const listEditsSchema = z.array(listEditSchema).max(MOST_EDITS);

/** Why a change was not made. */
export type EditRefusal = 'gone' | 'changedElsewhere' | 'tooMany' | 'alreadyThere' | 'badColumns' | 'lettered';
