import { webpAnswer } from '@/app/answers';
import { artProxy } from '@/lib/server/art/proxies';
import { makerFromHeaders } from '@/lib/server/auth/maker';

type Context = { params: Promise<{ sha256: string }> };

/** The small picture the bench shows in place of art, for whoever is signed in. What a SHA-256 names never changes. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  if (!(await makerFromHeaders(request.headers))) return new Response(null, { status: 401 });
  const { sha256 } = await params;
  const webp = /^[0-9a-f]{64}$/.test(sha256) ? await artProxy(sha256) : null;
  return webpAnswer(webp);
}
