import { shortSeal } from '@/lib/domain/revision/canonical';
import type { AnswerRoute } from '@/lib/domain/revision/state';
import type { Locale } from '@/lib/messages/locales';
import { zonedMomentWords } from '@/lib/messages/moments';
import { translatorFor } from '@/lib/messages/translator';

/** The last word of the person whose page it is. */
export type GivenAnswer = {
  readonly word: 'yes' | 'change';
  readonly at: Date;
  readonly typedName: string | null;
  readonly words: string | null;
  readonly how: AnswerRoute;
};

/** An answer that stands, in words: what was said, the facts of it, and what happens next. */
export type GivenWords = {
  readonly word: 'yes' | 'change';
  readonly title: string;
  readonly quote: { readonly title: string; readonly text: string } | null;
  readonly facts: readonly { readonly term: string; readonly text: string }[];
  readonly nextTitle: string;
  readonly next: readonly string[];
};

type Answered = {
  zone: string;
  shop: { name: string };
  number: number;
  seal: string;
  statement: string;
  mayAnswer: boolean;
  signedOff: boolean;
};

/** Puts the answer that stands into words; one that the shop noted down is told apart from one given on this page. */
export function givenWords(locale: Locale, given: GivenAnswer, answered: Answered): GivenWords {
  const t = translatorFor(locale, 'proof');
  const { how, word, at, typedName, words } = given;
  const { zone, seal, statement } = answered;
  const shop = answered.shop.name;
  const number = String(answered.number);
  const signedHere = word === 'yes' && how === 'link';
  return {
    word,
    title:
      how === 'link'
        ? t(word === 'yes' ? 'given.yes' : 'given.change', { number })
        : t(word === 'yes' ? 'given.yesNoted' : 'given.changeNoted', { number, shop, how }),
    quote: words ? { title: t('given.yourWords'), text: words } : null,
    facts: [
      { term: t('given.when'), text: zonedMomentWords(locale, zone, at) },
      ...(typedName ? [{ term: t(signedHere ? 'given.signed' : 'given.saidBy'), text: typedName }] : []),
      { term: t('given.what'), text: t('given.whatText', { number, seal: shortSeal(seal) }) },
      ...(signedHere ? [{ term: t('given.agreed'), text: statement }] : []),
    ],
    nextTitle: t('given.next'),
    next: nextSentences(locale, given, answered),
  };
}

function nextSentences(locale: Locale, { word, how }: GivenAnswer, { shop, mayAnswer, signedOff }: Answered): string[] {
  const t = translatorFor(locale, 'proof');
  const named = { shop: shop.name };
  const wrong = how === 'link' ? [] : [t('given.notRight', named)];
  if (word === 'change') return [t('given.changeNext', named), ...wrong, ...(mayAnswer ? [t('given.changeYes')] : [])];
  return [
    t(signedOff ? 'given.yesNext' : 'given.yesWaiting', named),
    ...(how === 'link' ? [t('given.yesWrong', named)] : wrong),
  ];
}
