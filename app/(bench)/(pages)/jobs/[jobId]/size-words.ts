import type { Garment } from '@/lib/domain/layout/document';
import { middleOf, type OfferedSize, sizeName, sizesToShow, totalCount } from '@/lib/domain/layout/sizes';
import type { Locale } from '@/lib/messages/locales';
import { sizeWords } from '@/lib/messages/reading-words';
import { translatorFor } from '@/lib/messages/translator';

/** The size in the middle of those ordered: the one a garment is shown in where only one is. */
export function sizeToDraw(garment: Garment): OfferedSize {
  const middle = middleOf(sizesToShow(garment));
  if (!middle) throw new Error(`garment ${garment.garmentId} has no size`);
  return middle;
}

/** A garment's counts in one line: `Youth S 2, M 5: 7 in all`. */
export function countsLine(locale: Locale, garment: Garment): string {
  const t = translatorFor(locale, 'send');
  const readings = translatorFor(locale, 'readings');
  const sizes = sizesToShow(garment)
    .filter(({ quantity }) => quantity > 0)
    .map((offered) => t('count', { size: sizeWords(readings, sizeName(offered)), quantity: offered.quantity }));
  const total = totalCount([garment]);
  return total === 0 ? t('noCountsLine') : t('counts', { sizes: sizes.join(', '), total });
}
