import { makerFromHeaders } from '@/lib/server/auth/maker';

/** What a sent revision gives never changes, but it is for the maker's eyes: kept by their browser alone. */
const KEPT = 'private, max-age=31536000, immutable';

type RawFile = { readonly bytes: Uint8Array; readonly fileName: string };

type RawOptions = {
  readonly mediaType: string;
  /** `attachment` is saved under its name; `inline` is shown, and saved under its name when saved. */
  readonly as: 'attachment' | 'inline';
};

/** Answers with a file made from a revision, for whoever is signed in. `make` gives null where there is no such file. */
export async function rawFile(
  request: Request,
  { mediaType, as }: RawOptions,
  make: () => Promise<RawFile | null>,
): Promise<Response> {
  if (!(await makerFromHeaders(request.headers))) return nothing(401);
  const file = await make();
  if (!file) return nothing(404);
  return new Response(new Uint8Array(file.bytes), {
    headers: {
      'Content-Type': mediaType,
      'Content-Length': String(file.bytes.byteLength),
      'Content-Disposition': contentDisposition(as, file.fileName),
      'Cache-Control': KEPT,
    },
  });
}

function nothing(status: 401 | 404): Response {
  return new Response(null, { status, headers: { 'Cache-Control': 'no-store' } });
}

/** Content-Disposition with the name in plain ASCII and in full (RFC 6266, section 4.3; RFC 8187, section 3.2). */
export function contentDisposition(as: RawOptions['as'], fileName: string): string {
  const plain = fileName
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .replace(/[^\x20-\x7E]|["\\%]/g, '_');
  const full = encodeURIComponent(fileName).replace(
    /['()*]/g,
    (mark) => `%${mark.charCodeAt(0).toString(16).toUpperCase()}`,
  );
  return `${as}; filename="${plain}"; filename*=UTF-8''${full}`;
}
