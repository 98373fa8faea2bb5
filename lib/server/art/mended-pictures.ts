import { createHash, randomUUID } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { artFactsSchema } from '@/lib/domain/art/art-facts';
import { inkBoxSchema } from '@/lib/domain/art/art-ref';
import type { Recipe } from '@/lib/domain/art/mend/recipe';
import { environment } from '../env/environment';
import { artFiles } from '../files/store';
import type { AppliedRecipe, ApplyRecipeRequest, RecipeRefusal } from '../image/apply-recipe';
import { runInWorker } from '../workers/pool';
import { WorkerError } from '../workers/worker-pool';

/** How long a recipe may take. */
export const MEND_LIMIT_MS = 120_000;

/** Mended pictures nobody has kept are taken away after this long, and when there are more than so many of them. */
const KEPT_FOR_MS = 12 * 60 * 60 * 1000;
const MOST_KEPT = 30;

/** Raised when a mend begins to give other pixels, so that what was made before is made again. */
const MENDS_FORMAT = 1;

const whole = z.number().int();
const resultSchema = z.object({
  widthPx: whole,
  heightPx: whole,
  ink: z.object({ inkBox: inkBoxSchema, inkHull: z.array(z.tuple([whole, whole])), anyClear: z.boolean() }),
  changed: z.boolean(),
  facts: artFactsSchema,
});

/** A picture after a recipe, lying aside until it is kept or forgotten. */
export type MendedPicture = z.infer<typeof resultSchema> & { readonly picturePath: string; readonly proxyPath: string };

export type MendFailure = RecipeRefusal | 'tookTooLong' | 'stopped' | 'failed';

export type MendedPictureResult =
  | { readonly ok: true; readonly mended: MendedPicture }
  /** `step` is which step could not be done, from 0, where it was a step. */
  | { readonly ok: false; readonly reason: MendFailure; readonly step?: number };

/**
 * The picture that a recipe makes of a kept one, made in a worker, or as it was made a while ago. What is looked at and
 * what is kept afterwards is the same file.
 */
export async function mendedPicture(
  pictureSha256: string,
  recipe: Recipe,
  signal?: AbortSignal,
): Promise<MendedPictureResult> {
  const folder = await mendsFolder();
  const name = createHash('sha256')
    .update(JSON.stringify([MENDS_FORMAT, pictureSha256, recipe]))
    .digest('hex');
  const known = await knownMend(folder, name);
  if (known) return { ok: true, mended: known };
  await forgetOldMends(folder);
  const part = join(folder, `${randomUUID()}.part`);
  const request = {
    picturePath: artFiles().pathOf(pictureSha256),
    recipe,
    mendedPath: `${part}.png`,
    proxyPath: `${part}.webp`,
  };
  try {
    const applied = await applyInWorker(request, signal);
    if (!applied.ok) return applied;
    const { ok: _, ...result } = applied;
    await writeFile(`${part}.json`, JSON.stringify(result));
    // The description comes last: a mend without one was never finished.
    for (const kind of ['png', 'webp', 'json']) await rename(`${part}.${kind}`, join(folder, `${name}.${kind}`));
  } finally {
    for (const kind of ['png', 'webp', 'json']) await rm(`${part}.${kind}`, { force: true });
  }
  const made = await knownMend(folder, name);
  if (!made) throw new Error(`mendedPicture: ${name} is gone as soon as it was made`);
  return { ok: true, mended: made };
}

async function applyInWorker(
  request: ApplyRecipeRequest,
  signal: AbortSignal | undefined,
): Promise<AppliedRecipe | { readonly ok: false; readonly reason: 'tookTooLong' | 'stopped' | 'failed' }> {
  const options = { timeoutMs: MEND_LIMIT_MS, ...(signal && { signal }) };
  try {
    return await runInWorker<ApplyRecipeRequest, AppliedRecipe>('mend-art', request, options);
  } catch (error) {
    if (!(error instanceof WorkerError)) throw error;
    return { ok: false, reason: error.reason === 'crashed' ? 'failed' : error.reason };
  }
}

async function mendsFolder(): Promise<string> {
  const folder = join(environment().filesDir, 'mends');
  await mkdir(folder, { recursive: true, mode: 0o700 });
  return folder;
}

async function knownMend(folder: string, name: string): Promise<MendedPicture | null> {
  const path = join(folder, name);
  const json = await readFile(`${path}.json`, 'utf8').catch(() => null);
  const result = json === null ? null : resultSchema.safeParse(JSON.parse(json));
  if (!result?.success) return null;
  const now = new Date();
  await utimes(`${path}.json`, now, now).catch(() => undefined);
  return { ...result.data, picturePath: `${path}.png`, proxyPath: `${path}.webp` };
}

/** Leaves the mends used last. A mend under way is younger than any limit. */
async function forgetOldMends(folder: string): Promise<void> {
  const names = await readdir(folder);
  const finished = await Promise.all(
    names.map(async (name) => ({ name, usedAt: (await stat(join(folder, name)).catch(() => null))?.mtimeMs ?? 0 })),
  );
  const oldest = Date.now() - KEPT_FOR_MS;
  const described = finished.filter(({ name }) => name.endsWith('.json') && !name.includes('.part'));
  const kept = described
    .filter(({ usedAt }) => usedAt >= oldest)
    .sort((one, other) => other.usedAt - one.usedAt)
    .slice(0, MOST_KEPT - 1);
  const keptNames = new Set(kept.map(({ name }) => name.replace(/\.json$/, '')));
  for (const { name, usedAt } of finished) {
    const isKept = keptNames.has(name.replace(/\.[a-z]+$/, ''));
    const isUnderWay = !described.some((each) => sameMend(each.name, name)) && usedAt >= oldest;
    if (!isKept && !isUnderWay) await rm(join(folder, name), { force: true });
  }
}

function sameMend(one: string, other: string): boolean {
  return one.split('.')[0] === other.split('.')[0];
}
