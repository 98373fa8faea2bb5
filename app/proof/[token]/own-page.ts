/**
 * Whether a form came from a page of this very address: by Fetch Metadata where the browser says it (W3C; browsers say it
 * to https and to localhost only), otherwise by its origin. A program that says neither is not a browser that was led here.
 */
export function isFromOwnPage({ headers }: { headers: Pick<Headers, 'get'> }): boolean {
  const site = headers.get('sec-fetch-site');
  if (site !== null) return site === 'same-origin';
  const origin = headers.get('origin');
  if (origin === null) return true;
  return URL.canParse(origin) && new URL(origin).host === (headers.get('x-forwarded-host') ?? headers.get('host'));
}
