import type { UsualColour } from '@/components/blanks/colours-form';
import { PRESET_CLOTH_IDS, PRESET_CLOTHS } from '@/components/garments/preset-cloths';
import { hasSecondCloth } from '@/lib/domain/garment/blank-style';
import type { GarmentKind } from '@/lib/domain/garment/kinds';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

/** The colours that are offered by name. */
export function usualColours(locale: Locale): UsualColour[] {
  const t = translatorFor(locale, 'garments.clothChoice.preset');
  return PRESET_CLOTH_IDS.map((id) => ({ name: t(id), hex: PRESET_CLOTHS[id] }));
}

/** What of a kind can be of a second cloth; null where it has none. */
export function secondPartOf(locale: Locale, kind: GarmentKind): string | null {
  return hasSecondCloth(kind) ? translatorFor(locale, 'garment-words.secondCloth')(kind) : null;
}
