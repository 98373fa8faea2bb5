import { pictureToSend } from '@/lib/server/revisions/revision-files';
import { rawFile } from '../../raw-file';

type Context = { params: Promise<{ revisionId: string }> };

/** GET /api/revisions/ID/picture.png: the whole revision in one picture. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { revisionId } = await params;
  return rawFile(request, { mediaType: 'image/png', as: 'inline' }, () => pictureToSend(revisionId));
}
