import { z } from 'zod';

const px = z.number().int().nonnegative();

/** The box around what will actually print, in pixels of the upright picture. */
export const inkBoxSchema = z.object({ x: px, y: px, width: px.min(1), height: px.min(1) });
export type InkBox = z.infer<typeof inkBoxSchema>;

/**
 * A picture as a layout names it: by the SHA-256 of its file, with the upright pixel size, the ink box, and the convex
 * hull of the ink (pixel corners, clockwise), so that a turned print is measured from its ink and not from its file.
 */
export const artRefSchema = z.object({
  artId: z.string().min(1),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  widthPx: px.min(1),
  heightPx: px.min(1),
  inkBox: inkBoxSchema,
  inkHull: z.array(z.tuple([px, px])).min(3),
});
export type ArtRef = z.infer<typeof artRefSchema>;
