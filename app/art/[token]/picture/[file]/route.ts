import { webpAnswer } from '@/app/answers';
import { customerPictures } from '@/lib/server/art/customer-art';
import { artProxy } from '@/lib/server/art/proxies';
import { openArtLink } from '../../open-art-link';

type Context = { params: Promise<{ token: string; file: string }> };

/** GET /art/TOKEN/picture/SHA256.webp: a small copy of a picture that was handed in through this link's job. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { token, file } = await params;
  const [, sha256] = /^([0-9a-f]{64})\.webp$/.exec(file) ?? [];
  const access = await openArtLink(token, request.headers);
  const isTheirs = sha256 && access && (await customerPictures(access)).some(({ ref }) => ref.sha256 === sha256);
  const webp = isTheirs ? await artProxy(sha256) : null;
  return webpAnswer(webp);
}
