import { webpAnswer } from '@/app/answers';
import { readPictureFileName } from '@/lib/domain/revision/picture-name';
import { proofPicture } from '@/lib/server/revisions/proof-picture';
import { openProof } from '../../../open-proof';

type Context = { params: Promise<{ token: string; number: string; file: string }> };

/** GET /proof/TOKEN/picture/NUMBER/FILE.webp: one picture of a revision. What was sent never changes. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { token, number, file } = await params;
  const picture = readPictureFileName(file);
  const access = await openProof(token, request.headers);
  const webp =
    access && picture && /^[1-9]\d{0,5}$/.test(number) ? await proofPicture(access, Number(number), picture) : null;
  return webpAnswer(webp);
}
