import { pictureOf } from '@/lib/server/revisions/pictures';
import { rawFile } from '../../../raw-file';

type Context = { params: Promise<{ revisionId: string; file: string }> };

/** GET /api/revisions/ID/picture/SHA256.webp: the picture of one sealed drawing. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { revisionId, file } = await params;
  const sha256 = /^([0-9a-f]{64})\.webp$/.exec(file)?.[1];
  return rawFile(request, { mediaType: 'image/webp', as: 'inline' }, async () => {
    const bytes = sha256 ? await pictureOf(revisionId, sha256) : null;
    return bytes && { bytes, fileName: file };
  });
}
