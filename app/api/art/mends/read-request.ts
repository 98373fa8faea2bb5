import { jsonAnswer } from '@/app/answers';
import { isFromOtherSite } from '@/app/api/uploads';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import type { MakerAccess } from '@/lib/server/auth/maker-access';

/** A recipe of forty steps with sixty boxes each is far under this. */
const MOST_BYTES = 500_000;

/** What is asked about a mend, once it is known who asks; or the answer to somebody who may not. */
export async function readMendRequest(
  request: Request,
): Promise<{ ok: true; maker: MakerAccess; body: unknown } | { ok: false; answer: Response }> {
  const maker = await makerFromHeaders(request.headers);
  if (!maker) return { ok: false, answer: mendRefused('signedOut', 401) };
  if (isFromOtherSite(request)) return { ok: false, answer: mendRefused('otherSite', 403) };
  const text = await request.text();
  if (text.length > MOST_BYTES) return { ok: false, answer: mendRefused('badRecipe', 413) };
  try {
    return { ok: true, maker, body: JSON.parse(text) as unknown };
  } catch {
    return { ok: false, answer: mendRefused('badRecipe', 400) };
  }
}

/** Says by a code why nothing was made; the words for it are the catalogue's. */
export function mendRefused(reason: string, status = 422, step?: number): Response {
  return jsonAnswer({ ok: false, reason, step }, status);
}
