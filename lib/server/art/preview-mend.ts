import { readFile } from 'node:fs/promises';
import type { ArtFacts, Spot } from '@/lib/domain/art/art-facts';
import type { InkBox } from '@/lib/domain/art/art-ref';
import { recipeSchema } from '@/lib/domain/art/mend/recipe';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { artFiles } from '../files/store';
import type { CutPartRequest } from '../image/cut-part';
import { runInWorker } from '../workers/pool';
import { WorkerError } from '../workers/worker-pool';
import { type MendFailure, mendedPicture } from './mended-pictures';

/** Longest side of a part that is looked at pixel for pixel, px. */
export const LONGEST_PART_PX = 1500;

const CUT_LIMIT_MS = 30_000;

export type MendRefused =
  | { readonly ok: false; readonly reason: 'noArt' | 'badRecipe' }
  /** `step` is which step could not be done, from 0, where it was a step. */
  | { readonly ok: false; readonly reason: MendFailure; readonly step?: number };

export type MendPreview =
  | {
      readonly ok: true;
      /** The mended picture, at most 1500 px long. */
      readonly webp: Uint8Array;
      /** Size and ink of the mended picture itself, px. */
      readonly widthPx: number;
      readonly heightPx: number;
      readonly inkBox: InkBox;
      /** False where the recipe changes nothing. */
      readonly changed: boolean;
      readonly facts: ArtFacts;
    }
  | MendRefused;

/**
 * What a recipe would make of a picture: worked out on its full pixels, shown small. Nothing is kept of it but for a while.
 * The signal ends the work when nobody waits for it any more.
 */
export async function previewMend(
  _maker: MakerAccess,
  artId: string,
  recipe: unknown,
  { signal }: { readonly signal?: AbortSignal } = {},
): Promise<MendPreview> {
  const result = await mendOf(artId, recipe, signal);
  if (!result.ok) return result;
  const { proxyPath, widthPx, heightPx, ink, changed, facts } = result.mended;
  const webp = new Uint8Array(await readFile(proxyPath));
  return { ok: true, webp, widthPx, heightPx, inkBox: ink.inkBox, changed, facts };
}

export type PartLook = { readonly ok: true; readonly webp: Uint8Array } | MendRefused | BesidePicture;
type BesidePicture = { readonly ok: false; readonly reason: 'besidePicture' };

/**
 * A part of a picture pixel for pixel, as it is where no recipe is given and as the recipe makes it where one is. `box` is in
 * px of the picture that is looked at; no more of it is shown than 1500 px each way.
 */
export async function lookAtPart(
  _maker: MakerAccess,
  artId: string,
  { recipe, box, signal }: { readonly recipe: unknown; readonly box: Spot; readonly signal?: AbortSignal },
): Promise<PartLook> {
  const picture = recipe === null ? await pictureOf(artId) : await mendOf(artId, recipe, signal);
  if (!picture.ok) return picture;
  const part = {
    x: box.x,
    y: box.y,
    width: Math.min(box.width, LONGEST_PART_PX),
    height: Math.min(box.height, LONGEST_PART_PX),
  };
  const path = 'mended' in picture ? picture.mended.picturePath : picture.picturePath;
  try {
    const request = { picturePath: path, box: part };
    const options = { timeoutMs: CUT_LIMIT_MS, ...(signal && { signal }) };
    const webp = await runInWorker<CutPartRequest, Uint8Array | null>('cut-part', request, options);
    return webp ? { ok: true, webp } : { ok: false, reason: 'besidePicture' };
  } catch (error) {
    if (!(error instanceof WorkerError)) throw error;
    return { ok: false, reason: error.reason === 'crashed' ? 'failed' : error.reason };
  }
}

async function pictureOf(artId: string) {
  const art = await reader().art.findUnique({ where: { id: artId }, select: { pictureSha256: true } });
  if (!art) return { ok: false, reason: 'noArt' } as const;
  return { ok: true, picturePath: artFiles().pathOf(art.pictureSha256) } as const;
}

async function mendOf(artId: string, recipe: unknown, signal: AbortSignal | undefined) {
  const parsed = recipeSchema.safeParse(recipe);
  if (!parsed.success) return { ok: false, reason: 'badRecipe' } as const;
  const art = await reader().art.findUnique({ where: { id: artId }, select: { pictureSha256: true } });
  if (!art) return { ok: false, reason: 'noArt' } as const;
  return mendedPicture(art.pictureSha256, parsed.data, signal);
}
