import type { FamilyPicture } from '@/components/art-page/art-family-list';
import type { ShownPicture } from '@/components/art-page/fetch-preview';
import type { CarryingPrint } from '@/components/art-page/keep-panel';
import { stepWords } from '@/components/art-page/step-words';
import type { LayoutDocument, Print } from '@/lib/domain/layout/document';
import type { Micrometres } from '@/lib/domain/measure/length';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { ensureChecked } from '@/lib/server/art/art-checks';
import type { ArtView } from '@/lib/server/art/list-art';
import { WorkerError } from '@/lib/server/workers/worker-pool';
import { proxyAddress } from '../../art-address';
import { type ArtFamily, widestUm } from './art-family';

/** A picture with what the check measured, measured now where that was not done yet; null where it takes too long. */
export async function shownPicture({ ref, facts }: ArtView): Promise<ShownPicture | null> {
  const measured = facts ?? (await measuredNow(ref.sha256));
  if (!measured) return null;
  const { widthPx, heightPx } = ref;
  return { src: proxyAddress(ref.sha256), widthPx, heightPx, facts: measured, changed: true };
}

async function measuredNow(sha256: string) {
  try {
    return await ensureChecked(sha256);
  } catch (error) {
    if (error instanceof WorkerError) return null;
    throw error;
  }
}

/** The prints of a family in words. */
export function shownPrints(
  locale: Locale,
  { garments }: Pick<LayoutDocument, 'garments'>,
  prints: readonly Print[],
  artId: string,
): (CarryingPrint & { widthUm: Micrometres })[] {
  const t = translatorFor(locale, 'art-page');
  const readings = translatorFor(locale, 'readings');
  return prints.map((print) => ({
    printId: print.printId,
    words: t('placed', {
      place: readings(`location.${print.locationId}`),
      garments: garments
        .filter(({ garmentId }) => print.garmentIds.includes(garmentId))
        .map(({ name }) => name)
        .join(', '),
    }),
    widthUm: widestUm(print),
    carriesThis: print.content.kind === 'art' && print.content.art.artId === artId,
  }));
}

/** The upload and everything kept of it, the upload first. */
export function shownFamily(locale: Locale, jobId: string, { upload, mends, shown }: ArtFamily): FamilyPicture[] {
  const t = translatorFor(locale, 'art-page');
  const words = translatorFor(locale, 'art-page.step');
  return [upload, ...mends].map(({ artId, ref, recipe }) => {
    const last = recipe?.steps.at(-1);
    return {
      artId,
      href: `/jobs/${jobId}/art/${artId}`,
      src: proxyAddress(ref.sha256),
      widthPx: ref.widthPx,
      heightPx: ref.heightPx,
      words:
        recipe && last ? t('mendedBy', { count: recipe.steps.length, last: stepWords(words, last) }) : t('asItCame'),
      note: artId === shown.artId ? t('thisOne') : null,
    };
  });
}
