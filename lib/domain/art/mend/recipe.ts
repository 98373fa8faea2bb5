import { z } from 'zod';
import { spotSchema } from '../art-facts';

const hex = z.string().regex(/^#[0-9A-Fa-f]{6}$/);
const px = z.number().int().nonnegative();

/** As many steps as one recipe can have. */
export const MOST_MEND_STEPS = 40;

/**
 * One step of mending a picture. Places and lengths are in pixels of the picture the step is given, which is what the step
 * before it left.
 */
export const mendStepSchema = z.discriminatedUnion('mend', [
  /** Keep only what lies in the box. */
  z.object({ mend: z.literal('crop'), box: spotSchema }),
  /** Make what lies in the boxes clear. */
  z.object({ mend: z.literal('erase'), boxes: z.array(spotSchema).min(1).max(60) }),
  /** Cut the empty margin off. */
  z.object({ mend: z.literal('trim') }),
  /**
   * Make the backing clear: from the edges in, and each enclosed area that was pointed at. Tolerance is a ΔE00.
   */
  z.object({
    mend: z.literal('knockOut'),
    hex,
    tolerance: z.number().min(0).max(60),
    fromEdges: z.boolean(),
    enclosed: z.array(z.object({ x: px, y: px })).max(200),
  }),
  /** Make clear what is smaller than so many joined pixels. */
  z.object({ mend: z.literal('clearSpecks'), smallerThanPx: px.min(1).max(100_000) }),
  /** Pixels with at least this alpha become solid, the others clear. */
  z.object({ mend: z.literal('hardenEdge'), alpha: z.number().int().min(1).max(255) }),
  /** Give all ink one colour; how clear each pixel is stays. */
  z.object({ mend: z.literal('recolour'), hex }),
  /** Let one-coloured ink grow by so much on every side. */
  z.object({ mend: z.literal('thicken'), byPx: z.number().positive().max(100) }),
  /** Turn fades into solid dots; `cellPx` from dot to dot, the rows turned by so much. */
  z.object({
    mend: z.literal('dots'),
    cellPx: z.number().min(2).max(400),
    turnCentideg: z.number().int().min(0).max(9_000),
  }),
  /** Trace the picture as flat areas of these colours. What comes of it is a redrawing, and is marked as one. */
  z.object({ mend: z.literal('redraw'), colours: z.array(hex).min(1).max(12), scale: z.number().int().min(1).max(8) }),
  /** Turn by quarters, clockwise. */
  z.object({ mend: z.literal('turn'), quarters: z.union([z.literal(1), z.literal(2), z.literal(3)]) }),
]);
export type MendStep = z.infer<typeof mendStepSchema>;
export type MendName = MendStep['mend'];

/** How a mended picture was made from its parent: can be read back and done again with the same result. */
export const recipeSchema = z.object({
  format: z.literal(1),
  steps: z.array(mendStepSchema).min(1).max(MOST_MEND_STEPS),
});
export type Recipe = z.infer<typeof recipeSchema>;

/** Whether a picture made by this recipe is no longer its parent's pixels but drawn anew. */
export function isRedrawn(recipe: Recipe): boolean {
  return recipe.steps.some(({ mend }) => mend === 'redraw');
}
