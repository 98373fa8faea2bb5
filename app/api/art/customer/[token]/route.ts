import { openArtLink } from '@/app/art/[token]/open-art-link';
import { isFromOwnPage } from '@/app/proof/[token]/own-page';
import { type ReceivedFromCustomer, receiveFromCustomer } from '@/lib/server/art/customer-art';
import { MOST_ART_BYTES } from '@/lib/server/art/take-in-picture';
import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';
import type { LinkAccess } from '@/lib/server/links/link-access';
import { secondsToWait } from '@/lib/server/links/wrong-links';
import { bodyBytes } from '../../body-bytes';

type Context = { params: Promise<{ token: string }> };

/** What a form adds to the file it sends. */
const MOST_FORM_BYTES = MOST_ART_BYTES + 65_536;

/**
 * Takes in one picture from a customer. The page's script sends the file itself (`?name=FILENAME`) and is answered with
 * what came of it; without scripts the page's form arrives whole and is led back to the page, which says so.
 */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const { token } = await params;
  if (!isFromOwnPage(request)) return answer({ ok: false, reason: 'otherSite' }, 403);
  const isForm = request.headers.get('content-type')?.startsWith('multipart/form-data') ?? false;
  const seconds = secondsToWait(token, request.headers.get(CLIENT_HEADER) ?? '', new Date());
  const access = seconds > 0 ? null : await openArtLink(token, request.headers);
  if (!access) return isForm ? leadTo(`/art/${token}`) : answer({ ok: false, reason: 'noJob' }, 404);
  if (isForm) return leadTo(`/art/${token}?${await ofForm(access, request)}`);
  const declared = request.headers.get('content-length');
  const received = await receiveFromCustomer(access, {
    name: new URL(request.url).searchParams.get('name') ?? '',
    declaredLength: declared === null ? null : Number(declared),
    body: bodyBytes(request.body),
    signal: request.signal,
  });
  return received.ok ? answer({ ok: true }, 200) : answer(received, 422);
}

/** What the page is told of a form: nothing where the picture was taken, since it is shown there, or why it was not. */
async function ofForm(access: LinkAccess, request: Request): Promise<URLSearchParams> {
  // A form is held in memory as a whole, so its length is known before it is read.
  const declared = Number(request.headers.get('content-length') ?? Number.NaN);
  if (!(declared <= MOST_FORM_BYTES)) return new URLSearchParams({ refused: 'tooLarge' });
  const file = (await request.formData().catch(() => null))?.get('picture');
  if (!(file instanceof File) || file.name === '') return new URLSearchParams({ refused: 'empty' });
  const received: ReceivedFromCustomer = await receiveFromCustomer(access, {
    name: file.name,
    declaredLength: file.size,
    body: bodyBytes(file.stream()),
  });
  if (received.ok) return new URLSearchParams({ taken: '1' });
  const kind = 'kind' in received ? received.kind : undefined;
  return new URLSearchParams({ refused: received.reason, ...(kind ? { kind } : {}) });
}

function answer(body: unknown, status: number): Response {
  return Response.json(body, { status, headers: { 'Cache-Control': 'no-store' } });
}

function leadTo(location: string): Response {
  return new Response(null, { status: 303, headers: { Location: location, 'Cache-Control': 'no-store' } });
}
