import type { PictureName } from '@/lib/domain/revision/picture-name';
import { reader } from '../db/database';
import type { LinkAccess } from '../links/link-access';
import { pictureOf } from './pictures';

/**
 * A picture of the customer's page: one of one revision of their job, WebP. Made at the first call where it is not there yet.
 * Null when the job has no such revision, it was withdrawn, or it does not show that picture.
 */
export async function proofPicture(
  { jobId }: Pick<LinkAccess, 'jobId'>,
  number: number,
  picture: PictureName,
): Promise<Uint8Array | null> {
  const revision = await reader().revision.findFirst({
    where: { jobId, number, events: { none: { kind: 'withdrawn' } } },
    select: { id: true },
  });
  return revision && pictureOf(revision.id, picture);
}
