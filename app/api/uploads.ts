import { MOST_ART_BYTES } from '@/lib/server/art/take-in-picture';

/**
 * Whether a page of another site had the browser send this. A form on somebody else's page cannot set the header, and a
 * browser always sends it (Fetch Metadata, W3C).
 */
export function isFromOtherSite({ headers }: Pick<Request, 'headers'>): boolean {
  const from = headers.get('sec-fetch-site');
  return from !== null && from !== 'same-origin';
}

/** The file that is a request's whole body: its length as it was declared, its bytes, and when its sender has gone. */
export function uploadedBody({ headers, body, signal }: Pick<Request, 'headers' | 'body' | 'signal'>) {
  const declared = headers.get('content-length');
  return { declaredLength: declared === null ? null : Number(declared), body: bodyBytes(body), signal };
}

/** What a form adds to the file it sends. */
const MOST_FORM_BYTES = MOST_ART_BYTES + 65_536;

/** The picture in a form that was sent without scripts, or why there is none. */
export async function pictureOfForm(request: Request) {
  // A form is held in memory as a whole, so its length is known before it is read.
  const declared = Number(request.headers.get('content-length') ?? Number.NaN);
  if (!(declared <= MOST_FORM_BYTES)) return { ok: false, reason: 'tooLarge' } as const;
  const file = (await request.formData().catch(() => null))?.get('picture');
  if (!(file instanceof File) || file.name === '') return { ok: false, reason: 'empty' } as const;
  return { ok: true, name: file.name, declaredLength: file.size, body: bodyBytes(file.stream()) } as const;
}

/** What a page is told of a picture that was refused, in its address. */
export function refusedQuery(refused: { readonly reason: string; readonly kind?: string }): URLSearchParams {
  return new URLSearchParams({ refused: refused.reason, ...(refused.kind ? { kind: refused.kind } : {}) });
}

/** The bytes of a body as they come; whoever stops reading stops the sending. */
async function* bodyBytes(body: ReadableStream<Uint8Array> | null): AsyncGenerator<Uint8Array> {
  const reader = body?.getReader();
  if (!reader) return;
  try {
    for (let part = await reader.read(); !part.done; part = await reader.read()) yield part.value;
  } finally {
    await reader.cancel().catch(() => undefined);
  }
}
