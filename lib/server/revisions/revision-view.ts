import { LRUCache } from 'lru-cache';
import { z } from 'zod';
import { viewGarmentSchema } from '@/lib/domain/revision/view';
import { viewPeopleSchema } from '@/lib/domain/revision/view-people';
import { reader } from '../db/database';

/** What is kept beside a sealed revision so that its page needs no more than one read. */
export const revisionViewSchema = z.object({
  locale: z.string(),
  unit: z.enum(['in', 'cm']),
  statement: z.string(),
  notes: z.string(),
  /** The maker's own words to the customer. */
  note: z.string(),
  lettered: z.boolean(),
  garments: z.array(viewGarmentSchema),
  /** What each person gets, where it differs: only for those who may see names. */
  people: viewPeopleSchema.optional(),
});
export type RevisionViewContent = z.infer<typeof revisionViewSchema>;

/** Views of revisions that are being looked at; each is at most some tens of kB. */
const MOST_KEPT_VIEWS = 200;
const kept = new LRUCache<string, RevisionViewContent>({ max: MOST_KEPT_VIEWS });

/**
 * The view of a revision. It is read from the database once: a sent revision never changes. `madeAt` is part of the key,
 * so that a view made again (after an erasure) is not mistaken for the old one.
 */
export async function revisionView(revisionId: string, madeAt: Date): Promise<RevisionViewContent> {
  const key = `${revisionId} ${madeAt.getTime()}`;
  const known = kept.get(key);
  if (known) return known;
  const row = await reader().revisionView.findUniqueOrThrow({ where: { revisionId } });
  const view = revisionViewSchema.parse(JSON.parse(row.json));
  kept.set(key, view);
  return view;
}

/** The view of a revision by its id alone; null when there is no such revision. */
export async function viewOf(revisionId: string): Promise<RevisionViewContent | null> {
  const row = await reader().revisionView.findUnique({ where: { revisionId }, select: { madeAt: true } });
  return row && revisionView(revisionId, row.madeAt);
}
