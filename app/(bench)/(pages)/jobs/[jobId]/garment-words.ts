import { type AgeBand, type GarmentKind, isSizedByWearer } from '@/lib/domain/garment/kinds';
import type { Garment, GarmentBlank } from '@/lib/domain/layout/document';
import { styleNameOf } from '@/lib/domain/layout/sizes';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

/** What the sizes of a kind for an age band go under: `Youth sizes`; just `Sizes` where they are nobody's age. */
export function bandWords(
  locale: Locale,
  { kind, ageBand }: { readonly kind: GarmentKind; readonly ageBand: AgeBand },
): string {
  const t = translatorFor(locale, 'garments.counts');
  return !isSizedByWearer(kind) && ageBand === 'adult' ? t('sizes') : t(`band.${ageBand}`);
}

/** What the sizes of one blank go under: `Youth sizes`, with the style's name where two hang in one band. */
export function sizesTitle(locale: Locale, garment: Pick<Garment, 'blanks'>, blank: GarmentBlank): string {
  const band = bandWords(locale, blank);
  const name = styleNameOf(garment, blank);
  return name === undefined ? band : translatorFor(locale, 'garments')('counts.bandOf', { band, name });
}
