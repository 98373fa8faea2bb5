import { z } from 'zod';

/** As many lines as one lettering print can have, and letters in one. */
export const MOST_LETTERING_LINES = 6;
export const LONGEST_LETTERING_LINE = 200;

/** The narrowest that letters are squeezed to before they are set lower, in hundredths of their own width. */
export const SQUEEZE_FLOOR_PERCENT = 70;

const hex = z.string().regex(/^#[0-9A-Fa-f]{6}$/);

/** A font as a layout names it: by the SHA-256 of its file. */
export const fontRefSchema = z.object({
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  family: z.string().min(1).max(120),
  style: z.string().min(1).max(60),
});
export type FontRef = z.infer<typeof fontRefSchema>;

/**
 * Type set as a print. A line is words with fields of the roster in braces, `{name}`; the name in the braces is a column's
 * id. Its height and the most it may take across stand in the print's size groups.
 */
export const letteringSchema = z.object({
  lines: z.array(z.string().max(LONGEST_LETTERING_LINE)).min(1).max(MOST_LETTERING_LINES),
  font: fontRefSchema,
  hex,
  /** A line round every letter, outside it; null for none. */
  outline: z.object({ hex, widthUm: z.number().int().min(100).max(10_000) }).nullable(),
  /** Added between letters, thousandths of the letter height. */
  trackingPermille: z.number().int().min(-200).max(1_000),
  letterCase: z.enum(['asWritten', 'upper']),
  align: z.enum(['left', 'centre', 'right']),
  /** How far the middle of a line rises over its ends, in hundredths of its width; negative sags; 0 is straight. */
  archPercent: z.number().int().min(-40).max(40),
  /** From the foot of one line to the top of the next, hundredths of the letter height. */
  lineGapPercent: z.number().int().min(0).max(400),
  squeezeFloorPercent: z.number().int().min(40).max(100),
});
export type Lettering = z.infer<typeof letteringSchema>;
