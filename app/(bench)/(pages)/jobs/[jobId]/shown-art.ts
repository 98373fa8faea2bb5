import { stepWords } from '@/components/art-page/step-words';
import type { ShownArt } from '@/components/jobs/art-list';
import { artFindings } from '@/lib/domain/art/findings/art-findings';
import { sharpnessHeadline } from '@/lib/domain/art/findings/real-detail';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { formatLimit } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { artFindingWords } from '@/lib/messages/art-finding-words';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import type { ArtView } from '@/lib/server/art/list-art';
import { clothsOf, printsCarrying, widthToCheckUm } from './art/[artId]/art-family';
import { proxyAddress } from './art-address';

type Laid = Pick<LayoutDocument, 'garments' | 'prints'>;

/** The job's pictures in words: how large each can be printed, where it is placed, the worst that was found in it. */
export function shownArt(
  locale: Locale,
  unit: LengthUnit,
  jobId: string,
  art: readonly ArtView[],
  layout: Laid,
): ShownArt[] {
  const t = translatorFor(locale, 'jobs.art');
  const readings = translatorFor(locale, 'readings');
  return art.map((each) => {
    const { artId, name, ref, facts } = each;
    const { sharpUm, fairUm } = sharpnessHeadline({ inkWidthPx: ref.inkBox.width, facts });
    const places = printsCarrying([artId], layout).map(({ locationId, garmentIds }) => {
      const names = layout.garments.filter(({ garmentId }) => garmentIds.includes(garmentId)).map((on) => on.name);
      return t('placedAt', { place: readings(`place.${locationId}`), garments: names.join(', ') });
    });
    return {
      artId,
      href: `/jobs/${jobId}/art/${artId}`,
      src: proxyAddress(ref.sha256),
      alt: t('picture', { name }),
      widthPx: ref.widthPx,
      heightPx: ref.heightPx,
      name,
      mended: mendedWords(locale, each),
      sharpness: t('sharpness', { sharp: formatLimit(sharpUm, unit), fair: formatLimit(fairUm, unit) }),
      pixels: t('pixels', { width: ref.inkBox.width, height: ref.inkBox.height }),
      placed: places.length > 0 ? places.join('; ') : t('notPlaced'),
      ...foundIn(locale, unit, each, layout),
    };
  });
}

/** How a mended picture came about; null for one as it was uploaded. */
function mendedWords(locale: Locale, { recipe }: ArtView): string | null {
  const last = recipe?.steps.at(-1);
  if (!(recipe && last)) return null;
  const step = stepWords(translatorFor(locale, 'art-page.step'), last);
  return translatorFor(locale, 'jobs.art')('mended', { count: recipe.steps.length, last: step });
}

/** The heaviest finding at the size and on the cloths the picture is laid out for, and how many there are besides. */
function foundIn(
  locale: Locale,
  unit: LengthUnit,
  { artId, facts, notes }: ArtView,
  layout: Laid,
): Pick<ShownArt, 'worst' | 'more' | 'notes' | 'mend'> {
  const t = translatorFor(locale, 'jobs.art');
  const noted = translatorFor(locale, 'art.note');
  if (!facts) return { worst: null, more: null, notes: notes.map((note) => noted(note)), mend: t('check') };
  const prints = printsCarrying([artId], layout);
  const widthUm = widthToCheckUm(prints);
  const [worst, ...others] = artFindings(facts, notes, { widthUm, cloths: clothsOf(layout, prints) });
  if (!worst) return { worst: null, more: null, notes: [], mend: t('open') };
  const words = artFindingWords(translatorFor(locale, 'art-findings'), worst, { widthUm, unit });
  return {
    worst: { severity: worst.severity, words: words.maker },
    more: others.length > 0 ? t('moreFound', { count: others.length }) : null,
    notes: [],
    mend: t(worst.severity === 'notes' ? 'open' : 'mend'),
  };
}
