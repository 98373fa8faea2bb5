import { noteOpened } from '@/lib/server/answers/note-opened';
import { openProof } from '../open-proof';
import { isFromOwnPage } from '../own-page';

type Context = { params: Promise<{ token: string }> };

/** POST /proof/TOKEN/opened: the page says that it was in sight for two seconds. */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const { token } = await params;
  if (!isFromOwnPage(request)) return nothing(403);
  const access = await openProof(token, request.headers);
  if (!access) return nothing(404);
  const revisionId = (await request.formData().catch(() => null))?.get('revision');
  if (typeof revisionId !== 'string') return nothing(400);
  await noteOpened(access, revisionId);
  return nothing(204);
}

function nothing(status: 204 | 400 | 403 | 404): Response {
  return new Response(null, { status, headers: { 'Cache-Control': 'no-store' } });
}
