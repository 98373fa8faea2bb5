import { reader, write } from '../db/database';
import { newId } from '../db/new-id';
import type { LinkAccess } from '../links/link-access';

/** A second look within this time is the same visit. */
const SAME_VISIT_MS = 60 * 60_000;

/** Keeps that somebody looked at a revision of their job through their link. Anything else is quietly ignored. */
export async function noteOpened(access: LinkAccess, revisionId: string): Promise<void> {
  const now = new Date();
  const revision = await reader().revision.findFirst({
    where: { id: revisionId, jobId: access.jobId },
    select: { id: true },
  });
  const recent = await reader().visit.findFirst({
    where: { linkId: access.linkId, revisionId, openedAt: { gt: new Date(now.getTime() - SAME_VISIT_MS) } },
    select: { id: true },
  });
  if (!revision || recent) return;
  await write((tx) => tx.visit.create({ data: { id: newId(), linkId: access.linkId, revisionId, openedAt: now } }));
}
