import { bodyBytes } from '@/app/api/art/body-bytes';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { receiveFont } from '@/lib/server/fonts/receive-font';

/**
 * Takes in a font of the shop's own: POST /api/fonts/upload?name=FILENAME with the file itself as the body. Answers with
 * its name, or with the code of what is wrong with it.
 */
export async function POST(request: Request): Promise<Response> {
  const maker = await makerFromHeaders(request.headers);
  if (!maker) return answer({ ok: false, reason: 'signedOut' }, 401);
  // A form on somebody else's page cannot set this header, and a browser always sends it (Fetch Metadata, W3C).
  const from = request.headers.get('sec-fetch-site');
  if (from !== null && from !== 'same-origin') return answer({ ok: false, reason: 'otherSite' }, 403);

  const declared = request.headers.get('content-length');
  const received = await receiveFont(maker, {
    fileName: new URL(request.url).searchParams.get('name') ?? '',
    declaredLength: declared === null ? null : Number(declared),
    body: bodyBytes(request.body),
  });
  return answer(received, received.ok ? 200 : 422);
}

function answer(body: unknown, status: number): Response {
  return Response.json(body, { status, headers: { 'Cache-Control': 'no-store' } });
}
