import { sealedFile } from '@/lib/server/revisions/revision-files';
import { rawFile } from '../../raw-file';

type Context = { params: Promise<{ revisionId: string }> };

/** GET /api/revisions/ID/envelope.json: the sealed bytes as they were sealed; their SHA-256 is the seal. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { revisionId } = await params;
  return rawFile(request, { mediaType: 'application/json', as: 'attachment' }, () => sealedFile(revisionId));
}
