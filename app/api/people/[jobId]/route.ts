import { z } from 'zod';
import { jsonAnswer } from '@/app/answers';
import { isFromOtherSite } from '@/app/api/uploads';
import type { SaveListAnswer } from '@/components/roster/list-keeper';
import { listEditsSchema } from '@/lib/domain/people/list-edit';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { editPeople } from '@/lib/server/people/edit-people';
import { loadPeople } from '@/lib/server/people/load-people';

type Context = { params: Promise<{ jobId: string }> };

const sentSchema = z.object({ baseVersion: z.number().int().min(0), edits: listEditsSchema });

/** GET /api/people/JOB?since=VERSION: the list as it is now, or 204 where it is still that version. For makers only. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const maker = await makerFromHeaders(request.headers);
  if (!maker) return new Response(null, { status: 401 });
  const view = await loadPeople(maker, (await params).jobId);
  if (!view) return new Response(null, { status: 404 });
  const since = new URL(request.url).searchParams.get('since');
  const headers = { 'Cache-Control': 'no-store' };
  if (String(view.list.version) === since) return new Response(null, { status: 204, headers });
  return Response.json(view.list, { headers });
}

/**
 * POST /api/people/JOB: changes to the list as JSON, `{ baseVersion, edits }`. A page that is left sends its last ones so,
 * and a whole pasted list is larger than a server action takes.
 */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const maker = await makerFromHeaders(request.headers);
  if (!maker) return answer({ ok: false, reason: 'signedOut' }, 401);
  if (isFromOtherSite(request)) return answer({ ok: false, reason: 'invalid' }, 403);
  const sent = sentSchema.safeParse(await request.json().catch(() => null));
  if (!sent.success) return answer({ ok: false, reason: 'invalid' }, 422);
  const { baseVersion, edits } = sent.data;
  const edited = await editPeople(maker, (await params).jobId, edits);
  if (!edited.ok) return answer({ ok: false, reason: edited.reason === 'takenIds' ? 'invalid' : edited.reason }, 422);
  const { list, refused } = edited;
  // One version on from where the page was: whatever is new in it came from the page itself.
  const isOwn = refused.length === 0 && list.version === baseVersion + 1;
  return answer({ ok: true, version: list.version, list: isOwn ? null : list, refused }, 200);
}

function answer(body: SaveListAnswer, status: number): Response {
  return jsonAnswer(body, status);
}
