import { listArt } from '@/lib/server/art/list-art';
import { makerFromHeaders } from '@/lib/server/auth/maker';

type Context = { params: Promise<{ jobId: string }> };

/** The pictures of a job, for a page of the bench that waits for one to arrive from a phone. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  if (!(await makerFromHeaders(request.headers))) return new Response(null, { status: 401 });
  const art = await listArt((await params).jobId);
  const pictures = art.map(({ artId, name, ref, facts, notes }) => ({ artId, name, art: ref, facts, notes }));
  return Response.json({ pictures }, { headers: { 'Cache-Control': 'no-store' } });
}
