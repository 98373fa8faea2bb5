import { type EditedBlanks, MOST_BLANKS } from '@/lib/domain/layout/blank-edits';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import type { GarmentEdit } from './edit-garments';

/** An edit of the blanks under a garment, its refusal with what the words for it need to know. */
export function blankEdit(locale: Locale, edited: EditedBlanks): GarmentEdit {
  if (edited.ok) return edited;
  const { refusal } = edited;
  switch (refusal.reason) {
    case 'countedSizesGone':
      return {
        ok: false,
        reason: refusal.reason,
        detail: { sizes: new Intl.ListFormat(locale).format(refusal.labels), count: refusal.labels.length },
      };
    case 'placeDoesNotSuit':
    case 'tooManyGroups': {
      const place = translatorFor(locale, 'readings')(`place.${refusal.print.locationId}`);
      return { ok: false, reason: refusal.reason, detail: { print: refusal.print.name, place } };
    }
    case 'tooManyBlanks':
      return { ok: false, reason: refusal.reason, detail: { blanks: MOST_BLANKS } };
    default:
      return { ok: false, reason: refusal.reason };
  }
}
