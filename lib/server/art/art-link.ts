import type { MakerAccess } from '../auth/maker-access';
import { reader, write } from '../db/database';
import { issueLink, linkUrl, liveLinks, revokeLink } from '../links/links';
import { appendRecord } from '../record/append';

/** A link made before the garments are due, or long after, is good for this long. */
const LEAST_DAYS = 30;
const DAY_MS = 86_400_000;

/** The address where a customer hands in pictures for a job, and until when it is good. */
export type ArtLink = { readonly url: string; readonly expiresAt: Date };

/** The art link of a job that is good now; null where none was made, or it was taken back or ran out. */
export async function artLinkOf(_maker: MakerAccess, jobId: string, now = new Date()): Promise<ArtLink | null> {
  const [link] = (await liveLinks(jobId, now, 'art')).values();
  return link ? { url: linkUrl(link, 'art'), expiresAt: link.expiresAt } : null;
}

/**
 * Makes the link where the customer of a job hands in pictures, or lets the one there is last longer. It may do nothing
 * else, so it can be passed on to whoever has the picture. Good until the garments are needed, and a month at least.
 */
export async function makeArtLink(
  maker: MakerAccess,
  jobId: string,
  now = new Date(),
): Promise<{ ok: true } | { ok: false; reason: 'noJob' }> {
  const job = await reader().job.findUnique({
    where: { id: jobId },
    select: { neededAt: true, contacts: { orderBy: { createdAt: 'asc' }, take: 1, select: { id: true } } },
  });
  const [contact] = job?.contacts ?? [];
  if (!(job && contact)) return { ok: false, reason: 'noJob' };
  const expiresAt = new Date(Math.max(job.neededAt.getTime(), now.getTime() + LEAST_DAYS * DAY_MS));
  const may = { sign: false, remark: false, seeNames: false, upload: true };
  await write(async (tx) => {
    await appendRecord(tx, jobId, 'artLinkMade', { by: maker.userId, to: contact.id }, now);
    await issueLink(tx, { contactId: contact.id, may, expiresAt }, now);
  });
  return { ok: true };
}

/** Takes the art link of a job back; what was handed in stays. Nothing happens where there is none. */
export async function endArtLink(maker: MakerAccess, jobId: string, now = new Date()): Promise<void> {
  const links = [...(await liveLinks(jobId, now, 'art')).values()];
  if (links.length === 0) return;
  await write(async (tx) => {
    await appendRecord(tx, jobId, 'artLinkEnded', { by: maker.userId }, now);
    for (const { id } of links) await revokeLink(tx, id, now);
  });
}
