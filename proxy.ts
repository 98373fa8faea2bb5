import { type NextRequest, NextResponse } from 'next/server';
import { contentPolicy } from '@/lib/server/edge/content-policy';

function randomNonce(): string {
  return btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(16))));
}

/** Headers every page gets: its own content policy, and on the customer's side nothing kept and nothing passed on. */
export function proxy(request: NextRequest): NextResponse {
  const forCustomer = /^\/proof(\/|$)/.test(request.nextUrl.pathname);
  const nonce = randomNonce();
  const policy = contentPolicy({ nonce, wasm: !forCustomer, development: process.env.NODE_ENV === 'development' });

  const headers = new Headers(request.headers);
  headers.set('x-nonce', nonce);
  // The page reads its nonce from the policy in the request.
  headers.set('Content-Security-Policy', policy);

  const response = NextResponse.next({ request: { headers } });
  response.headers.set('Content-Security-Policy', policy);
  // Not no-referrer: with it a form sends "Origin: null", which is refused.
  response.headers.set('Referrer-Policy', 'same-origin');
  response.headers.set('X-Robots-Tag', 'noindex, nofollow, noarchive');
  if (forCustomer) response.headers.set('Cache-Control', 'no-store');
  return response;
}

export const config = {
  // Raw responses and uploads (api/) stay out: the proxy would cut long bodies without a word.
  matcher: ['/((?!api/|_next/static/|icon\\.svg$).*)'],
};
