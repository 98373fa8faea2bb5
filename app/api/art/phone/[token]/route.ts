import { isFromOwnPage } from '@/app/proof/[token]/own-page';
import { openPhone, type PhoneAccess, receiveFromPhone } from '@/lib/server/art/phone-upload';
import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';
import { bodyBytes } from '../../body-bytes';

type Context = { params: Promise<{ token: string }> };
type Received = Awaited<ReturnType<typeof receiveFromPhone>>;

/**
 * Takes in one picture from the maker's phone. The page's script sends the file itself (`?name=FILENAME`) and is answered
 * like any upload; without scripts the page's form arrives whole and is led back to the page, which says what came of it.
 */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const { token } = await params;
  if (!isFromOwnPage(request)) return answer({ ok: false, reason: 'otherSite' }, 403);
  const isForm = request.headers.get('content-type')?.startsWith('multipart/form-data') ?? false;
  const phone = await openPhone(token, request.headers.get(CLIENT_HEADER) ?? '');
  if (!phone.ok) return isForm ? leadTo(`/phone/${token}`) : answer(phone, 403);
  if (isForm) return leadTo(`/phone/${token}?${await ofForm(phone.access, request)}`);
  const declared = request.headers.get('content-length');
  const received = await receiveFromPhone(phone.access, {
    name: new URL(request.url).searchParams.get('name') ?? '',
    declaredLength: declared === null ? null : Number(declared),
    body: bodyBytes(request.body),
    signal: request.signal,
  });
  return answer(received, received.ok ? 200 : 422);
}

/** What the page is told of a form: the name of the picture that was taken, or why none was. */
async function ofForm(access: PhoneAccess, request: Request): Promise<URLSearchParams> {
  const file = (await request.formData().catch(() => null))?.get('picture');
  if (!(file instanceof File) || file.name === '') return new URLSearchParams({ refused: 'empty' });
  const received: Received = await receiveFromPhone(access, {
    name: file.name,
    declaredLength: file.size,
    body: bodyBytes(file.stream()),
  });
  if (received.ok) return new URLSearchParams({ taken: received.art.name });
  const kind = 'kind' in received ? received.kind : undefined;
  return new URLSearchParams({ refused: received.reason, ...(kind ? { kind } : {}) });
}

function answer(body: unknown, status: number): Response {
  return Response.json(body, { status, headers: { 'Cache-Control': 'no-store' } });
}

function leadTo(location: string): Response {
  return new Response(null, { status: 303, headers: { Location: location, 'Cache-Control': 'no-store' } });
}
