import { LONGEST_CHANGE, LONGEST_SIGNED_NAME, type Tick, ticksAsked } from '@/lib/domain/revision/answer';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

/** The words of the form, and how much may be typed into it. */
export type AnswerWords = {
  readonly check: string;
  readonly ticks: readonly { readonly tick: Tick; readonly label: string }[];
  readonly name: string;
  readonly nameHint: string;
  readonly longestName: number;
  readonly consent: string;
  readonly yes: string;
  readonly change: string;
  readonly words: string;
  readonly wordsHint: string;
  readonly longestChange: number;
  readonly send: string;
};

/** What there is to tick: `lettered` where names or numbers are set on the garments; the prints that come out soft. */
export type ToTick = { readonly lettered: boolean; readonly softPrints: readonly string[] };

/** The form's words for a shop. */
export function answerWords(locale: Locale, shop: string, { lettered, softPrints }: ToTick): AnswerWords {
  const t = translatorFor(locale, 'proof');
  const soft = { count: softPrints.length, prints: new Intl.ListFormat(locale).format(softPrints) };
  return {
    check: t('answer.check'),
    ticks: ticksAsked({ soft: softPrints.length > 0 }).map((tick) => ({
      tick,
      label: t(`answer.ticks.${tick === 'spelling' && lettered ? 'lettering' : tick}`, soft),
    })),
    name: t('answer.name'),
    nameHint: t('answer.nameHint'),
    longestName: LONGEST_SIGNED_NAME,
    consent: t('answer.consent'),
    yes: t('answer.yes'),
    change: t('answer.change'),
    words: t('answer.words'),
    wordsHint: t('answer.wordsHint', { shop }),
    longestChange: LONGEST_CHANGE,
    send: t('answer.send'),
  };
}
