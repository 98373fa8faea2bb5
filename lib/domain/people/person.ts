import { z } from 'zod';

/** How many garments one line may ask for; above it somebody mistyped (common practice, no source). */
export const MOST_OF_ONE_ITEM = 10_000;

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

/** The roster part of a layout document: its columns, and one entry a person. */
export const peopleSchema = z.object({
  columns: z.array(z.object({ columnId: z.string().min(1), name: z.string().min(1).max(60) })).max(20),
  lines: z.array(personSchema).max(2_000),
});
export type People = z.infer<typeof peopleSchema>;
