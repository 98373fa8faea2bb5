import { DateTime } from 'luxon';
import { z } from 'zod';

const words = (longest: number) => z.string().trim().max(longest);
const blankToNull = (text: string | null | undefined) => (text?.trim() ? text.trim() : null);

/**
 * What a new job needs. Codes in the messages: `required`, `email`, `dateTime`, `tooLong` are put into words by the page.
 * `neededBy` is wall-clock time where the shop is, `YYYY-MM-DDTHH:mm`.
 */
export const newJobSchema = z.object({
  customerName: words(120).min(1, 'required'),
  customerEmail: z.preprocess(
    (value) => blankToNull(value as string | null),
    z.email('email').max(254, 'tooLong').nullable(),
  ),
  customerPhone: z.preprocess((value) => blankToNull(value as string | null), z.string().max(40, 'tooLong').nullable()),
  title: words(120).min(1, 'required'),
  neededBy: z
    .string()
    .refine((text) => /^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(text) && DateTime.fromISO(text).isValid, 'dateTime'),
  notes: words(4_000),
});
export type NewJob = z.infer<typeof newJobSchema>;

/** The instant of a wall-clock time in a zone. Throws for a time that is not one: it was checked at the edge. */
export function instantOf(local: string, zone: string): Date {
  const at = DateTime.fromISO(local, { zone });
  if (!at.isValid) throw new Error(`not a time in ${zone}: ${local}`);
  return at.toUTC().toJSDate();
}
