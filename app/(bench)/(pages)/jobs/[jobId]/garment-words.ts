import type { GarmentKind } from '@/lib/domain/garment/kinds';
import type { Garment, GarmentBlank } from '@/lib/domain/layout/document';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { secondClothWords } from './offered-styles';

/** Kinds whose sizes are nobody's age. */
const AGELESS: readonly GarmentKind[] = ['tote', 'plainPanel'];

/** A garment's cloth in words: `White, sleeves and collar Navy`. */
export function clothWords(locale: Locale, { cloth, blanks }: Pick<Garment, 'cloth' | 'blanks'>): string {
  const t = translatorFor(locale, 'garments');
  const first = t('cloth', { name: cloth.name, heather: String(cloth.heather) });
  const second = blanks[0] && secondClothWords(locale, blanks[0].kind);
  if (!second || cloth.secondName === undefined) return first;
  return t('twoCloths', { first, part: second.toLocaleLowerCase(locale), second: cloth.secondName });
}

/** What the sizes of one blank go under: `Youth sizes`, with the style's name where two hang in one band. */
export function sizesTitle(locale: Locale, { blanks }: Pick<Garment, 'blanks'>, blank: GarmentBlank): string {
  const t = translatorFor(locale, 'garments');
  const band =
    AGELESS.includes(blank.kind) && blank.ageBand === 'adult' ? t('counts.sizes') : t(`counts.band.${blank.ageBand}`);
  const alike = blanks.filter(({ ageBand }) => ageBand === blank.ageBand);
  return alike.length > 1 ? t('counts.bandOf', { band, name: blank.name }) : band;
}
