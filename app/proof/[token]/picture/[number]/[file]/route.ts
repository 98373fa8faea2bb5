import { proofPicture } from '@/lib/server/revisions/proof-picture';
import { openProof } from '../../../open-proof';

type Context = { params: Promise<{ token: string; number: string; file: string }> };

/** GET /proof/TOKEN/picture/NUMBER/SHA256.webp: one drawing of a revision. What was sent never changes. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { token, number, file } = await params;
  const sha256 = /^([0-9a-f]{64})\.webp$/.exec(file)?.[1];
  const access = await openProof(token, request.headers);
  const webp =
    access && sha256 && /^[1-9]\d{0,5}$/.test(number) ? await proofPicture(access, Number(number), sha256) : null;
  if (!webp) return new Response(null, { status: 404, headers: { 'Cache-Control': 'no-store' } });
  return new Response(new Uint8Array(webp), {
    headers: {
      'Content-Type': 'image/webp',
      'Content-Length': String(webp.byteLength),
      'Cache-Control': 'private, max-age=31536000, immutable',
    },
  });
}
