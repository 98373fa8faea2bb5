'use server';

import { refresh } from 'next/cache';
import { requireMaker } from '@/app/maker';
import type { Kept } from '@/components/art-page/keep-panel';
import type { MendName, MendStep, Recipe } from '@/lib/domain/art/mend/recipe';
import { makeMend } from '@/lib/server/art/mend-art';
import { suggestedRecipe } from '@/lib/server/art/suggest-mend';
import { useArtInstead as layOnInstead } from '@/lib/server/art/use-art-instead';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { loadJob } from '@/lib/server/jobs/load-jobs';
import { familyOf, printsOfFamily } from './art-family';

/** Keeps a mend as a picture of its own and says where it is found; where it is wanted, the prints carry it from now on. */
export async function keepMendAction(
  jobId: string,
  uploadId: string,
  recipe: Recipe,
  useOnPrints: boolean,
): Promise<Kept> {
  const maker = await requireMaker();
  const made = await makeMend(maker, uploadId, recipe);
  if (!made.ok) return { ok: false, reason: made.reason };
  const { artId } = made.art;
  const used = useOnPrints ? await layOnPrints(maker, jobId, artId) : { ok: true as const, prints: 0 };
  if (!used.ok) return { ok: false, reason: used.reason };
  const said = new URLSearchParams({ kept: made.alreadyThere ? 'before' : 'now', prints: String(used.prints) });
  return { ok: true, href: `/jobs/${jobId}/art/${artId}?${said}` };
}

/** Lays a picture on every print that carries another one made from the same upload. */
export async function useOnPrintsAction(jobId: string, artId: string): Promise<{ reason: string } | null> {
  const maker = await requireMaker();
  const used = await layOnPrints(maker, jobId, artId);
  if (!used.ok) return { reason: used.reason };
  refresh();
  return null;
}

/** Settings a mend could begin with, read off all pixels; null where the picture gives no cause for it. */
export async function suggestMendAction(
  uploadId: string,
  mendedId: string,
  mend: MendName,
  ofMended: boolean,
): Promise<MendStep | null> {
  const maker = await requireMaker();
  const suggested = await suggestedRecipe(maker, ofMended ? mendedId : uploadId, mend);
  return suggested.ok ? suggested.step : null;
}

async function layOnPrints(
  maker: MakerAccess,
  jobId: string,
  artId: string,
): Promise<{ ok: true; prints: number } | { ok: false; reason: string }> {
  const job = await loadJob(maker, jobId);
  const family = job && familyOf(job.art, artId);
  if (!family) return { ok: false, reason: 'noArt' };
  const carried = printsOfFamily(family, job.draft.layout).flatMap(({ content }) =>
    content.kind === 'art' && content.art.artId !== artId ? [content.art.artId] : [],
  );
  let prints = 0;
  for (const fromArtId of new Set(carried)) {
    const used = await layOnInstead(maker, jobId, fromArtId, artId);
    if (!used.ok) return used;
    prints += used.prints;
  }
  return { ok: true, prints };
}
