import { jsonAnswer, leadTo } from '@/app/answers';
import { pictureOfForm, refusedQuery, uploadedBody } from '@/app/api/uploads';
import { isFromOwnPage } from '@/app/proof/[token]/own-page';
import { openPhone, type PhoneAccess, receiveFromPhone } from '@/lib/server/art/phone-upload';
import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';

type Context = { params: Promise<{ token: string }> };
type Received = Awaited<ReturnType<typeof receiveFromPhone>>;

/**
 * Takes in one picture from the maker's phone. The page's script sends the file itself (`?name=FILENAME`) and is answered
 * like any upload; without scripts the page's form arrives whole and is led back to the page, which says what came of it.
 */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const { token } = await params;
  if (!isFromOwnPage(request)) return jsonAnswer({ ok: false, reason: 'otherSite' }, 403);
  const isForm = request.headers.get('content-type')?.startsWith('multipart/form-data') ?? false;
  const phone = await openPhone(token, request.headers.get(CLIENT_HEADER) ?? '');
  if (!phone.ok) return isForm ? leadTo(`/phone/${token}`) : jsonAnswer(phone, 403);
  if (isForm) return leadTo(`/phone/${token}?${await ofForm(phone.access, request)}`);
  const received = await receiveFromPhone(phone.access, {
    name: new URL(request.url).searchParams.get('name') ?? '',
    ...uploadedBody(request),
  });
  return jsonAnswer(received, received.ok ? 200 : 422);
}

/** What the page is told of a form: the name of the picture that was taken, or why none was. */
async function ofForm(access: PhoneAccess, request: Request): Promise<URLSearchParams> {
  const sent = await pictureOfForm(request);
  if (!sent.ok) return refusedQuery(sent);
  const received: Received = await receiveFromPhone(access, sent);
  if (received.ok) return new URLSearchParams({ taken: received.art.name });
  return refusedQuery(received);
}
