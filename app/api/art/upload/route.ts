import { jsonAnswer } from '@/app/answers';
import { isFromOtherSite, uploadedBody } from '@/app/api/uploads';
import { receiveArt } from '@/lib/server/art/receive-art';
import { makerFromHeaders } from '@/lib/server/auth/maker';

/**
 * Takes in one picture: POST /api/art/upload?job=ID&name=FILENAME with the file itself as the body. Answers with the
 * picture, or with the code of what is wrong with it; the words for a code are the catalogue's.
 */
export async function POST(request: Request): Promise<Response> {
  if (!(await makerFromHeaders(request.headers))) return jsonAnswer({ ok: false, reason: 'signedOut' }, 401);
  if (isFromOtherSite(request)) return jsonAnswer({ ok: false, reason: 'otherSite' }, 403);

  const { searchParams } = new URL(request.url);
  const received = await receiveArt({
    jobId: searchParams.get('job') ?? '',
    name: searchParams.get('name') ?? '',
    ...uploadedBody(request),
  });
  return jsonAnswer(received, received.ok ? 200 : 422);
}
