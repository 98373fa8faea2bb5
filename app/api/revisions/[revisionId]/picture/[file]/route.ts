import { readPictureFileName } from '@/lib/domain/revision/picture-name';
import { pictureOf } from '@/lib/server/revisions/pictures';
import { rawFile } from '../../../raw-file';

type Context = { params: Promise<{ revisionId: string; file: string }> };

/** GET /api/revisions/ID/picture/FILE.webp: one picture of a revision. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { revisionId, file } = await params;
  const picture = readPictureFileName(file);
  return rawFile(request, { mediaType: 'image/webp', as: 'inline' }, async () => {
    const bytes = picture ? await pictureOf(revisionId, picture) : null;
    return bytes && { bytes, fileName: file };
  });
}
