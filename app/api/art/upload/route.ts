import { receiveArt } from '@/lib/server/art/receive-art';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { bodyBytes } from '../body-bytes';

/**
 * Takes in one picture: POST /api/art/upload?job=ID&name=FILENAME with the file itself as the body. Answers with the
 * picture, or with the code of what is wrong with it; the words for a code are the catalogue's.
 */
export async function POST(request: Request): Promise<Response> {
  if (!(await makerFromHeaders(request.headers))) return answer({ ok: false, reason: 'signedOut' }, 401);
  // A form on somebody else's page cannot set this header, and a browser always sends it (Fetch Metadata, W3C).
  const from = request.headers.get('sec-fetch-site');
  if (from !== null && from !== 'same-origin') return answer({ ok: false, reason: 'otherSite' }, 403);

  const { searchParams } = new URL(request.url);
  const declared = request.headers.get('content-length');
  const received = await receiveArt({
    jobId: searchParams.get('job') ?? '',
    name: searchParams.get('name') ?? '',
    declaredLength: declared === null ? null : Number(declared),
    body: bodyBytes(request.body),
    signal: request.signal,
  });
  return answer(received, received.ok ? 200 : 422);
}

function answer(body: unknown, status: number): Response {
  return Response.json(body, { status, headers: { 'Cache-Control': 'no-store' } });
}
