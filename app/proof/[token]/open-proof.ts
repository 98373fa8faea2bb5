import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';
import type { LinkAccess } from '@/lib/server/links/link-access';
import { openLink } from '@/lib/server/links/links';
import { countWrongLink } from '@/lib/server/links/wrong-links';

/** The access a link's token gives, or null for one that does not open; each of those is counted against its client. */
export async function openProof(token: string, headers: Pick<Headers, 'get'>): Promise<LinkAccess | null> {
  const now = new Date();
  const access = await openLink(token, now);
  if (!access) countWrongLink(headers.get(CLIENT_HEADER) ?? '', now);
  return access;
}
