import { jsonAnswer } from '@/app/answers';
import { isFromOtherSite, uploadedBody } from '@/app/api/uploads';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { receiveFont } from '@/lib/server/fonts/receive-font';

/**
 * Takes in a font of the shop's own: POST /api/fonts/upload?name=FILENAME with the file itself as the body. Answers with
 * its name, or with the code of what is wrong with it.
 */
export async function POST(request: Request): Promise<Response> {
  const maker = await makerFromHeaders(request.headers);
  if (!maker) return jsonAnswer({ ok: false, reason: 'signedOut' }, 401);
  if (isFromOtherSite(request)) return jsonAnswer({ ok: false, reason: 'otherSite' }, 403);

  const received = await receiveFont(maker, {
    fileName: new URL(request.url).searchParams.get('name') ?? '',
    ...uploadedBody(request),
  });
  return jsonAnswer(received, received.ok ? 200 : 422);
}
