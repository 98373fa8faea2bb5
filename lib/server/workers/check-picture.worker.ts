import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { type CheckPictureRequest, checkPicture } from '../image/check-picture';

/** Measures a kept picture apart from the thread that answers requests. */
export function run(request: CheckPictureRequest): Promise<ArtFacts> {
  return checkPicture(request);
}
