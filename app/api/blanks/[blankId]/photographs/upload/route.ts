import { jsonAnswer } from '@/app/answers';
import { isFromOtherSite, uploadedBody } from '@/app/api/uploads';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { receivePhotograph } from '@/lib/server/blanks/receive-photograph';

type Context = { params: Promise<{ blankId: string }> };

/**
 * Takes in a photograph of a blank: POST /api/blanks/ID/photographs/upload?size=ID&colour=ID&side=front with the file
 * itself as the body. Answers with its id, or with the code of what is wrong with it.
 */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const maker = await makerFromHeaders(request.headers);
  if (!maker) return jsonAnswer({ ok: false, reason: 'signedOut' }, 401);
  if (isFromOtherSite(request)) return jsonAnswer({ ok: false, reason: 'otherSite' }, 403);

  const asked = new URL(request.url).searchParams;
  const received = await receivePhotograph(
    maker,
    {
      blankId: (await params).blankId,
      sizeId: asked.get('size') ?? '',
      colourId: asked.get('colour') ?? '',
      side: asked.get('side') ?? '',
    },
    uploadedBody(request),
  );
  return jsonAnswer(received, received.ok ? 200 : 422);
}
