import { writeFile } from 'node:fs/promises';
import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { factsOfPixels } from '@/lib/domain/art/check/facts-of-pixels';
import { type Ink, inkOfPixels } from '@/lib/domain/art/ink';
import { applyMend, type MendRefusal } from '@/lib/domain/art/mend/apply-mend';
import { MOST_MEND_BYTES, mendBytes } from '@/lib/domain/art/mend/mend-memory';
import { inkBoxOf } from '@/lib/domain/art/mend/mend-picture';
import type { MendStep, Recipe } from '@/lib/domain/art/mend/recipe';
import { writeProxy } from './proxy';
import { MOST_PIXELS, openPicture, openPixels, type Pixels, toPixels } from './quiet-sharp';
import { redraw } from './redraw';

export type ApplyRecipeRequest = {
  /** The upright sRGB picture the recipe begins with. */
  readonly picturePath: string;
  readonly recipe: Recipe;
  /** Where the mended picture is written, PNG. */
  readonly mendedPath: string;
  /** Where its small picture for screens is written. */
  readonly proxyPath: string;
};

export type RecipeRefusal = MendRefusal | 'tooManyPixels';

export type AppliedRecipe =
  | {
      readonly ok: true;
      readonly widthPx: number;
      readonly heightPx: number;
      readonly ink: Ink;
      /** False where the mended picture is pixel for pixel the one it was made from. */
      readonly changed: boolean;
      readonly facts: ArtFacts;
    }
  | {
      readonly ok: false;
      readonly reason: RecipeRefusal;
      /** Which step could not be done, from 0. */
      readonly step: number;
    };

/**
 * Does a recipe on a picture's full pixels and writes what comes of it. The same picture and recipe give the same file,
 * byte for byte; where a step cannot be done nothing is written.
 */
export async function applyRecipe(request: ApplyRecipeRequest): Promise<AppliedRecipe> {
  const original = await toPixels(openPicture(request.picturePath));
  const before = fingerprintOf(original);
  const result = await afterSteps(original, request.recipe.steps);
  if (!result.ok) return result;
  const { pixels } = result;
  const ink = inkOfPixels(pixels.rgba, pixels.widthPx, pixels.heightPx);
  if (!ink) throw new Error('applyRecipe: the last step left nothing and did not say so');
  await writeFile(request.mendedPath, await asPng(pixels));
  await writeProxy(pixels, request.proxyPath);
  return {
    ok: true,
    widthPx: pixels.widthPx,
    heightPx: pixels.heightPx,
    ink,
    changed: fingerprintOf(pixels) !== before,
    facts: factsOfPixels(pixels, ink),
  };
}

type AfterSteps =
  | { readonly ok: true; readonly pixels: Pixels }
  | { readonly ok: false; readonly reason: RecipeRefusal; readonly step: number };

async function afterSteps(original: Pixels, steps: readonly MendStep[]): Promise<AfterSteps> {
  let pixels = original;
  for (const [index, step] of steps.entries()) {
    if (!fitsInMemory(pixels, step)) return { ok: false, reason: 'tooManyPixels', step: index };
    const mended = await afterStep(pixels, step);
    if (!mended.ok) return { ok: false, reason: mended.reason, step: index };
    pixels = mended.picture;
  }
  return { ok: true, pixels };
}

type StepResult =
  | { readonly ok: true; readonly picture: Pixels }
  | { readonly ok: false; readonly reason: RecipeRefusal };

async function afterStep(pixels: Pixels, step: MendStep): Promise<StepResult> {
  if (step.mend !== 'redraw') return applyMend(pixels, step);
  const redrawn = await redraw(pixels, step.colours, step.scale);
  return inkBoxOf(redrawn) ? { ok: true, picture: redrawn } : { ok: false, reason: 'nothingLeft' };
}

function fitsInMemory({ widthPx, heightPx }: Pixels, step: MendStep): boolean {
  const pixels = widthPx * heightPx;
  const grown = step.mend === 'thicken' ? 2 * Math.ceil(step.byPx) : 0;
  const scale = step.mend === 'redraw' ? step.scale : 1;
  const resultPixels = (widthPx + grown) * (heightPx + grown) * scale * scale;
  return resultPixels <= MOST_PIXELS && mendBytes(step.mend, pixels, resultPixels) <= MOST_MEND_BYTES;
}

/** Level and filter are written down: they are part of what makes the bytes the same at every time. */
function asPng(pixels: Pixels): Promise<Uint8Array> {
  return openPixels(pixels).png({ compressionLevel: 3, adaptiveFiltering: true, palette: false }).toBuffer();
}

/** FNV-1a over the size and the pixels (Fowler, Noll, Vo; RFC 9923), to tell two pictures apart, not to prove anything. */
function fingerprintOf({ rgba, widthPx, heightPx }: Pixels): string {
  let [one, other] = [0x811c9dc5, 0x01000193];
  for (let at = 0; at + 3 < rgba.length; at += 4) {
    const alpha = rgba[at + 3] ?? 0;
    // What a clear pixel's colour is makes no picture of its own.
    const pixel =
      alpha === 0 ? 0 : ((rgba[at] ?? 0) << 24) | ((rgba[at + 1] ?? 0) << 16) | ((rgba[at + 2] ?? 0) << 8) | alpha;
    one = Math.imul(one ^ pixel, 0x01000193);
    other = Math.imul(other + pixel, 0x85ebca6b) ^ (other >>> 13);
  }
  return `${widthPx} ${heightPx} ${one} ${other}`;
}
