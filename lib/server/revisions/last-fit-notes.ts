import type { FitNotes } from '@/lib/domain/revision/fit-notes';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { viewOf } from './revision-view';

/** What the newest revision of a job says about prints that are meant to cross a seam, by print id; empty before the first. */
export async function lastFitNotes(_maker: MakerAccess, jobId: string): Promise<FitNotes> {
  const newest = await reader().revision.findFirst({
    where: { jobId },
    orderBy: { number: 'desc' },
    select: { id: true },
  });
  const view = newest && (await viewOf(newest.id));
  const prints = (view?.garments ?? []).flatMap(({ sizes }) =>
    sizes.flatMap(({ sides }) => sides.flatMap((side) => side.prints)),
  );
  return Object.fromEntries(prints.flatMap(({ printId, fitNote }) => (fitNote ? [[printId, fitNote]] : [])));
}
