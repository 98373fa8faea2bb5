import { type NextRequest, NextResponse } from 'next/server';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { contentPolicy } from '@/lib/server/edge/content-policy';
import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';
import { secondsToWait } from '@/lib/server/links/wrong-links';

/** Where a phone hands pictures over: opened with a token, like a customer's link. */
const PHONES_SIDE = /^\/phone\//;
const CUSTOMERS_SIDE = /^\/(?:proof|art)\/([^/]+)(\/picture\/)?/;
const SECONDS_A_MINUTE = 60;

function randomNonce(): string {
  return btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(16))));
}

function tooManyWrongLinks(seconds: number): NextResponse {
  const minutes = Math.ceil(seconds / SECONDS_A_MINUTE);
  const sentence = translatorFor(defaultLocale, 'proof')('refused.tooManyWrongLinks', { minutes });
  return new NextResponse(`${sentence}\n`, {
    status: 429,
    headers: {
      'Content-Type': 'text/plain; charset=utf-8',
      'Cache-Control': 'no-store',
      'Retry-After': String(seconds),
    },
  });
}

/**
 * Headers every page gets: its own content policy, and on the customer's side nothing kept and nothing passed on. Whoever
 * tries too many links that are none gets no page at all for a while.
 */
export function proxy(request: NextRequest): NextResponse {
  const [forCustomer, token = '', forPicture] = CUSTOMERS_SIDE.exec(request.nextUrl.pathname) ?? [];
  const seconds = forCustomer ? secondsToWait(token, request.headers.get(CLIENT_HEADER) ?? '', new Date()) : 0;
  if (seconds > 0) return tooManyWrongLinks(seconds);

  const nonce = randomNonce();
  const forPhone = PHONES_SIDE.test(request.nextUrl.pathname);
  const policy = contentPolicy({
    nonce,
    wasm: !(forCustomer || forPhone),
    development: process.env.NODE_ENV === 'development',
  });

  const headers = new Headers(request.headers);
  headers.set('x-nonce', nonce);
  // The page reads its nonce from the policy in the request.
  headers.set('Content-Security-Policy', policy);

  const response = NextResponse.next({ request: { headers } });
  response.headers.set('Content-Security-Policy', policy);
  // Not no-referrer: with it a form sends "Origin: null", which is refused.
  response.headers.set('Referrer-Policy', 'same-origin');
  response.headers.set('X-Robots-Tag', 'noindex, nofollow, noarchive');
  // A sealed picture never changes: its route says how long it may be kept.
  if (forPhone || (forCustomer && !forPicture)) response.headers.set('Cache-Control', 'no-store');
  return response;
}

export const config = {
  // Raw responses and uploads (api/) stay out: the proxy would cut long bodies without a word.
  matcher: ['/((?!api/|_next/static/|icon\\.svg$).*)'],
};
