const NOT_KEPT = { 'Cache-Control': 'no-store' } as const;

/** Answers with JSON that no cache keeps. */
export function jsonAnswer(body: unknown, status: number): Response {
  return Response.json(body, { status, headers: NOT_KEPT });
}

/** Leads a form that was sent on to a page. */
export function leadTo(location: string): Response {
  return new Response(null, { status: 303, headers: { Location: location, ...NOT_KEPT } });
}

/** A picture that never changes under its address, for whoever may see it to keep; none is there for null. */
export function webpAnswer(webp: Uint8Array | null): Response {
  if (!webp) return new Response(null, { status: 404, headers: NOT_KEPT });
  return new Response(new Uint8Array(webp), {
    headers: {
      'Content-Type': 'image/webp',
      'Content-Length': String(webp.byteLength),
      'Cache-Control': 'private, max-age=31536000, immutable',
    },
  });
}
