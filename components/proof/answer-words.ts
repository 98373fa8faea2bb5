import { LONGEST_CHANGE, LONGEST_SIGNED_NAME, TICKS, type Tick } from '@/lib/domain/revision/answer';
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

/** The form's words for a shop; `lettered` where names or numbers are set on the garments. */
export function answerWords(locale: Locale, shop: string, lettered: boolean): AnswerWords {
  const t = translatorFor(locale, 'proof');
  return {
    check: t('answer.check'),
    ticks: TICKS.map((tick) => ({
      tick,
      label: t(`answer.ticks.${tick === 'spelling' && lettered ? 'lettering' : tick}`),
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
