import type { ClothOffer } from '@/components/garments/chosen-cloth';
import { hasSecondCloth } from '@/lib/domain/garment/blank-style';
import type { Garment } from '@/lib/domain/layout/document';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { loadBlank } from '@/lib/server/blanks/load-blank';
import { loadJob } from '@/lib/server/jobs/load-jobs';

/** What cloths a garment of a job can be of; null when it was removed meanwhile. */
export async function loadClothOffer(maker: MakerAccess, jobId: string, garmentId: string): Promise<ClothOffer | null> {
  const garment = await loadGarment(maker, jobId, garmentId);
  return garment ? clothOfferOf(maker, garment) : null;
}

/** The blank of the shop's list that a blank of a garment was taken from; null for a starter chart, or once it is gone. */
export async function loadShopBlankId(
  maker: MakerAccess,
  jobId: string,
  garmentId: string,
  blankId: string,
): Promise<string | null> {
  const garment = await loadGarment(maker, jobId, garmentId);
  return garment?.blanks.find((blank) => blank.blankId === blankId)?.shopBlankId ?? null;
}

async function loadGarment(maker: MakerAccess, jobId: string, garmentId: string): Promise<Garment | undefined> {
  const job = await loadJob(maker, jobId);
  return job?.draft.layout.garments.find((each) => each.garmentId === garmentId);
}

/** What cloths a garment can be of: the colours of its first blank that is of the shop's list and names any. */
export async function clothOfferOf(maker: MakerAccess, { blanks }: Pick<Garment, 'blanks'>): Promise<ClothOffer> {
  const hasSecond = blanks.some(({ kind }) => hasSecondCloth(kind));
  for (const { shopBlankId } of blanks) {
    const blank = shopBlankId === undefined ? null : await loadBlank(maker, shopBlankId);
    if (blank && blank.style.colours.length > 0) return { colours: blank.style.colours, hasSecond };
  }
  return { colours: [], hasSecond };
}
