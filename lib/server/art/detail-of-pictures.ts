import type { LayoutDocument } from '@/lib/domain/layout/document';
import type { DetailOf } from '@/lib/domain/revision/soft-prints';
import { WorkerError } from '../workers/worker-pool';
import { ensureChecked } from './art-checks';

/**
 * How much real detail the pictures of a layout have, measured now where that was not done yet. Of one that cannot be
 * measured in time nothing is known.
 */
export async function detailOfPictures({ prints }: Pick<LayoutDocument, 'prints'>): Promise<DetailOf> {
  const shown = prints.flatMap(({ content }) => (content.kind === 'art' ? [content.art.sha256] : []));
  const facts = new Map<string, Awaited<ReturnType<typeof ensureChecked>>>();
  for (const sha256 of new Set(shown)) facts.set(sha256, await measured(sha256));
  return (sha256) => facts.get(sha256) ?? null;
}

async function measured(sha256: string): ReturnType<typeof ensureChecked> {
  try {
    return await ensureChecked(sha256);
  } catch (error) {
    if (error instanceof WorkerError) return null;
    throw error;
  }
}
