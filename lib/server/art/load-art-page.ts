import type { LayoutDocument } from '@/lib/domain/layout/document';
import { startingValues } from '@/lib/domain/layout/locations';
import { type Micrometres, umFromInches } from '@/lib/domain/measure/length';
import { reader } from '../db/database';
import { readStoredLayout } from '../drafts/stored-layout';
import type { LinkAccess } from '../links/link-access';
import { customerPictures } from './customer-art';
import type { ArtView } from './list-art';

/** What the page shows where a customer hands in pictures. */
export type ArtPageView = {
  readonly job: { readonly title: string; readonly zone: string };
  /** Newest first. */
  readonly pictures: readonly ArtView[];
  /** How wide a print of a picture is taken to be, and the cloths of the order it would lie on. */
  readonly widthUm: Micrometres;
  readonly cloths: readonly { readonly name: string; readonly hex: string }[];
};

/** A print across the front of an adult's garment, where the order does not say otherwise (common practice, no source). */
const USUAL_WIDTH_UM = umFromInches(10);

/** Reads the page of an art link; null when its job is gone. */
export async function loadArtPage(access: LinkAccess): Promise<ArtPageView | null> {
  const [job, pictures] = await Promise.all([
    reader().job.findUnique({ where: { id: access.jobId }, include: { draft: { select: { json: true } } } }),
    customerPictures(access),
  ]);
  if (!job) return null;
  const garments = job.draft ? readStoredLayout(job.draft.json).garments : [];
  return {
    job: { title: job.title, zone: job.timeZone },
    pictures,
    widthUm: widestStart(garments),
    cloths: clothsOf(garments),
  };
}

/** The widest a picture starts out across the front of any garment of the order: what it has to be good for. */
function widestStart(garments: LayoutDocument['garments']): Micrometres {
  const widths = garments
    .flatMap(({ blanks }) => blanks)
    .flatMap((blank) => startingValues('fullFront', blank)?.widthUm ?? []);
  return widths.length > 0 ? Math.max(...widths) : USUAL_WIDTH_UM;
}

function clothsOf(garments: LayoutDocument['garments']): ArtPageView['cloths'] {
  const byHex = new Map(garments.map(({ cloth: { name, hex } }) => [hex.toUpperCase(), { name, hex }]));
  return [...byHex.values()];
}
