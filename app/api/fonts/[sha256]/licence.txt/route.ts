import { makerFromHeaders } from '@/lib/server/auth/maker';
import { packagedLicence } from '@/lib/server/fonts/packaged-fonts';

type Context = { params: Promise<{ sha256: string }> };

/** The licence of a font that comes with the app. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  if (!(await makerFromHeaders(request.headers))) return new Response(null, { status: 401 });
  const licence = packagedLicence((await params).sha256);
  if (licence === null) return new Response(null, { status: 404, headers: { 'Cache-Control': 'no-store' } });
  return new Response(licence, {
    headers: { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'private, max-age=86400' },
  });
}
