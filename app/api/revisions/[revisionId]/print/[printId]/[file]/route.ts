import { printFile } from '@/lib/server/revisions/revision-files';
import { rawFile } from '../../../../raw-file';

type Context = { params: Promise<{ revisionId: string; printId: string; file: string }> };

/** GET /api/revisions/ID/print/PRINT/GROUP.png?person=ID: one print in one of its size groups, at 300 px per inch; `person` is whose words it says. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { revisionId, printId, file } = await params;
  const groupId = /^(.+)\.png$/.exec(file)?.[1];
  const personId = new URL(request.url).searchParams.get('person');
  return rawFile(request, { mediaType: 'image/png', as: 'attachment' }, async () =>
    groupId ? printFile(revisionId, printId, groupId, personId) : null,
  );
}
