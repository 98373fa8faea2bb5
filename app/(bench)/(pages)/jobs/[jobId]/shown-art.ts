import type { ShownArt } from '@/components/jobs/art-list';
import { sharpnessLimits } from '@/lib/domain/art/sharpness';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { formatLimit } from '@/lib/domain/measure/format-length';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import type { ArtView } from '@/lib/server/art/list-art';
import { proxyAddress } from './art-address';

/** The job's pictures in words: how large each can be printed, where it is placed, what was noticed about it. */
export function shownArt(
  locale: Locale,
  unit: LengthUnit,
  art: readonly ArtView[],
  layout: Pick<LayoutDocument, 'garments' | 'prints'>,
): ShownArt[] {
  const t = translatorFor(locale, 'jobs.art');
  const readings = translatorFor(locale, 'readings');
  const notes = translatorFor(locale, 'art.note');
  return art.map(({ artId, name, ref, notes: noticed }) => {
    const { sharpUm, fairUm } = sharpnessLimits(ref.inkBox.width);
    const places = layout.prints
      .filter(({ content }) => content.kind === 'art' && content.art.artId === artId)
      .map(({ locationId, garmentIds }) => {
        const names = layout.garments
          .filter(({ garmentId }) => garmentIds.includes(garmentId))
          .map((each) => each.name);
        return t('placedAt', { place: readings(`place.${locationId}`), garments: names.join(', ') });
      });
    return {
      artId,
      src: proxyAddress(ref.sha256),
      alt: t('picture', { name }),
      widthPx: ref.widthPx,
      heightPx: ref.heightPx,
      name,
      sharpness: t('sharpness', { sharp: formatLimit(sharpUm, unit), fair: formatLimit(fairUm, unit) }),
      pixels: t('pixels', { width: ref.inkBox.width, height: ref.inkBox.height }),
      placed: places.length > 0 ? places.join('; ') : t('notPlaced'),
      notes: noticed.map((note) => notes(note)),
    };
  });
}
