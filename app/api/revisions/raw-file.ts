import { makerFromHeaders } from '@/lib/server/auth/maker';
import { contentDisposition } from '@/lib/server/edge/content-disposition';

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
