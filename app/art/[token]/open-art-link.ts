import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';
import type { LinkAccess } from '@/lib/server/links/link-access';
import { openLink } from '@/lib/server/links/links';
import { countWrongLink } from '@/lib/server/links/wrong-links';

/** The access the token of an art link gives, or null for one that does not open; each of those is counted. */
export async function openArtLink(token: string, headers: Pick<Headers, 'get'>): Promise<LinkAccess | null> {
  const now = new Date();
  const access = await openLink(token, now, 'art');
  if (!access) countWrongLink(headers.get(CLIENT_HEADER) ?? '', now);
  return access;
}
