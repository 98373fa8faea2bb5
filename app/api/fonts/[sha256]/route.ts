import { makerFromHeaders } from '@/lib/server/auth/maker';
import { fontBytes } from '@/lib/server/fonts/font-bytes';

type Context = { params: Promise<{ sha256: string }> };

/** A whole font file for the layout table, for whoever is signed in. What a SHA-256 names never changes. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  if (!(await makerFromHeaders(request.headers))) return new Response(null, { status: 401 });
  const { sha256 } = await params;
  const bytes = /^[0-9a-f]{64}$/.test(sha256) ? await fontBytes(sha256) : null;
  if (!bytes) return new Response(null, { status: 404, headers: { 'Cache-Control': 'no-store' } });
  return new Response(new Uint8Array(bytes), {
    headers: { 'Content-Type': 'font/sfnt', 'Cache-Control': 'private, max-age=31536000, immutable' },
  });
}
