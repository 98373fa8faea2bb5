import { jsonAnswer, leadTo } from '@/app/answers';
import { pictureOfForm, refusedQuery, uploadedBody } from '@/app/api/uploads';
import { openArtLink } from '@/app/art/[token]/open-art-link';
import { isFromOwnPage } from '@/app/proof/[token]/own-page';
import { type ReceivedFromCustomer, receiveFromCustomer } from '@/lib/server/art/customer-art';
import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';
import type { LinkAccess } from '@/lib/server/links/link-access';
import { secondsToWait } from '@/lib/server/links/wrong-links';

type Context = { params: Promise<{ token: string }> };

/**
 * Takes in one picture from a customer. The page's script sends the file itself (`?name=FILENAME`) and is answered with
 * what came of it; without scripts the page's form arrives whole and is led back to the page, which says so.
 */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const { token } = await params;
  if (!isFromOwnPage(request)) return jsonAnswer({ ok: false, reason: 'otherSite' }, 403);
  const isForm = request.headers.get('content-type')?.startsWith('multipart/form-data') ?? false;
  const seconds = secondsToWait(token, request.headers.get(CLIENT_HEADER) ?? '', new Date());
  const access = seconds > 0 ? null : await openArtLink(token, request.headers);
  if (!access) return isForm ? leadTo(`/art/${token}`) : jsonAnswer({ ok: false, reason: 'noJob' }, 404);
  if (isForm) return leadTo(`/art/${token}?${await ofForm(access, request)}`);
  const received = await receiveFromCustomer(access, {
    name: new URL(request.url).searchParams.get('name') ?? '',
    ...uploadedBody(request),
  });
  return received.ok ? jsonAnswer({ ok: true }, 200) : jsonAnswer(received, 422);
}

/** What the page is told of a form: nothing where the picture was taken, since it is shown there, or why it was not. */
async function ofForm(access: LinkAccess, request: Request): Promise<URLSearchParams> {
  const sent = await pictureOfForm(request);
  if (!sent.ok) return refusedQuery(sent);
  const received: ReceivedFromCustomer = await receiveFromCustomer(access, sent);
  if (received.ok) return new URLSearchParams({ taken: '1' });
  return refusedQuery(received);
}
