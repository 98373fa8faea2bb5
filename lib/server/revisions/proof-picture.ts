import type { PictureName } from '@/lib/domain/revision/picture-name';
import { reader } from '../db/database';
import type { LinkAccess } from '../links/link-access';
import { pictureOf } from './pictures';

/**
 * A picture of the customer's page: one of one revision of their job, WebP. Made at the first call where it is not there yet.
 * Null when the job has no such revision, it was withdrawn, it does not show that picture, or the link may not see names and it has one.
 */
export async function proofPicture(
  { jobId, may }: Pick<LinkAccess, 'jobId' | 'may'>,
  number: number,
  picture: PictureName,
): Promise<Uint8Array | null> {
  if (picture.kind === 'person' && !may.seeNames) return null;
  const revision = await reader().revision.findFirst({
    where: { jobId, number, events: { none: { kind: 'withdrawn' } } },
    select: { id: true },
  });
  return revision && pictureOf(revision.id, picture);
}
