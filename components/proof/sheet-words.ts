import type { LengthUnit } from '@/lib/domain/measure/length';
import { ticksAsked } from '@/lib/domain/revision/answer';
import { shortSeal } from '@/lib/domain/revision/canonical';
import type { RevisionState } from '@/lib/domain/revision/state';
import { softPrintNames, type ViewGarment } from '@/lib/domain/revision/view';
import type { Locale } from '@/lib/messages/locales';
import { zonedMomentWords } from '@/lib/messages/moments';
import { translatorFor } from '@/lib/messages/translator';
import { type AnswerWords, answerWords } from './answer-words';
import { type GarmentWords, garmentWords } from './garment-words';
import { type GivenAnswer, type GivenWords, givenWords } from './given-words';
import { type ReachWords, reachWords, type ShopReach } from './reach-words';
import { type FormContent, formContent, type RefusedForm, type RefusedWords, refusedWords } from './refused-words';

/** A sent revision as one person's link shows it. */
export type Sheet = {
  /** The language and unit it was sealed with. */
  readonly locale: Locale;
  readonly unit: LengthUnit;
  /** IANA name of the shop's time zone. */
  readonly zone: string;
  readonly shop: ShopReach;
  readonly jobTitle: string;
  readonly neededAt: Date;
  readonly contactName: string | null;
  readonly revisionId: string;
  readonly number: number;
  /** All 64 digits. */
  readonly seal: string;
  readonly state: RevisionState;
  readonly currentNumber: number | null;
  readonly note: string;
  readonly notes: string;
  readonly statement: string;
  readonly lettered: boolean;
  readonly garments: readonly ViewGarment[];
  readonly given: GivenAnswer | null;
  readonly mayAnswer: boolean;
  readonly signedOff: boolean;
  /** Address of the page itself, from the root: `/proof/TOKEN`. */
  readonly path: string;
  /** Random, for each page that is shown: the same form sent twice is one answer. */
  readonly formKey: string;
  /** An answer that was refused, to be shown again. */
  readonly refused: RefusedForm | null;
};

/** What to do, or what came of it, at the top of the page. */
export type TopWords = {
  /** `ask`: the answer is waited for. The rest are kinds of notice. */
  readonly kind: 'ask' | 'look' | 'done' | 'note';
  readonly title: string;
  readonly text: string | null;
  readonly needed: { readonly before: string; readonly moment: string } | null;
  readonly link: { readonly href: string; readonly text: string } | null;
};

type Titled = { readonly title: string; readonly text: string };

/** Everything a proof sheet says, with nothing left to look up or to work out. */
export type SheetWords = {
  readonly locale: Locale;
  readonly documentTitle: string;
  readonly shop: string;
  readonly title: string;
  readonly whose: { readonly forWhom: string; readonly notYou: string; readonly text: string };
  readonly top: TopWords;
  readonly note: Titled | null;
  readonly garments: readonly {
    readonly words: GarmentWords;
    readonly pictures: { readonly address: string; readonly widthPx: number; readonly heightPx: number };
  }[];
  readonly counts: string;
  readonly notes: Titled | null;
  readonly answer: {
    readonly title: string;
    readonly refused: RefusedWords | null;
    readonly given: GivenWords | null;
    readonly form: FormWords | null;
  } | null;
  readonly reach: ReachWords;
  readonly seal: string;
  /** Told once the page was looked at; null for a look that is not the current one. */
  readonly opened: { readonly action: string; readonly revisionId: string } | null;
};

export type FormWords = {
  readonly words: AnswerWords;
  readonly statement: string;
  readonly action: string;
  readonly revisionId: string;
  readonly formKey: string;
  readonly content: FormContent;
  /** Kept closed under these words: a yes was given that may still be changed. */
  readonly closedUnder: string | null;
};

const known = new WeakMap<Sheet['garments'], { readonly key: string; readonly words: SheetWords }>();

/**
 * Puts a proof sheet into words. The last ones of a revision are kept for as long as its garments are kept in memory: it
 * never changes, so from one look to the next only the form's key is new.
 */
export function sheetWords({ formKey, garments, ...sheet }: Sheet): SheetWords {
  const key = JSON.stringify(sheet);
  const kept = known.get(garments);
  const words = kept?.key === key ? kept.words : putInWords({ ...sheet, garments });
  if (kept?.words !== words) known.set(garments, { key, words });
  const { answer } = words;
  return answer?.form ? { ...words, answer: { ...answer, form: { ...answer.form, formKey } } } : words;
}

type KnownSheet = Omit<Sheet, 'formKey'>;

function putInWords(sheet: KnownSheet): SheetWords {
  const { locale, unit, shop, number, contactName, path, note, notes, revisionId } = sheet;
  const t = translatorFor(locale, 'proof');
  const title = t('title', { job: sheet.jobTitle, look: t('look', { number: String(number) }) });
  return {
    locale,
    documentTitle: t(sheet.refused ? 'documentTitleRefused' : 'documentTitle', { title, shop: shop.name }),
    shop: shop.name,
    title,
    whose: {
      forWhom: contactName ? t('for', { name: contactName }) : t('forNobody'),
      notYou: t('notYou'),
      text: t('notYouText', { name: contactName ?? 'none', shop: shop.name }),
    },
    top: topWords(sheet),
    note: note ? { title: t('note', { shop: shop.name }), text: note } : null,
    garments: sheet.garments.map((garment) => ({
      words: garmentWords(garment, locale, unit),
      pictures: { address: `${path}/picture/${number}`, widthPx: garment.widthPx, heightPx: garment.heightPx },
    })),
    counts: t('counts'),
    notes: notes ? { title: t('notes'), text: notes } : null,
    answer: answerPart(sheet),
    reach: reachWords(locale, sheet),
    seal: t('foot', { number: String(number), seal: shortSeal(sheet.seal) }),
    opened: sheet.state === 'current' ? { action: `${path}/opened`, revisionId } : null,
  };
}

function topWords({ locale, zone, shop, state, number, currentNumber, path, ...sheet }: KnownSheet): TopWords {
  const t = translatorFor(locale, 'proof');
  const plain = { text: null, needed: null, link: null };
  if (state === 'replaced') {
    const current = String(currentNumber);
    return {
      ...plain,
      kind: 'look',
      title: t('top.replaced', { number: String(number), current }),
      text: t('top.replacedText'),
      link: { href: path, text: t('top.toCurrent', { current }) },
    };
  }
  const toAnswer = (text: string) => ({ href: '#answer', text });
  if (sheet.given?.word === 'yes')
    return { ...plain, kind: 'done', title: t('top.yes'), link: toAnswer(t('top.seeAnswer')) };
  if (sheet.given)
    return {
      ...plain,
      kind: 'note',
      title: t('top.change', { shop: shop.name }),
      link: toAnswer(t('top.seeAnswer')),
    };
  if (sheet.mayAnswer)
    return {
      kind: 'ask',
      title: t('ask.look'),
      text: null,
      needed: { before: t('ask.needed'), moment: zonedMomentWords(locale, zone, sheet.neededAt) },
      link: toAnswer(t('ask.toAnswer')),
    };
  return sheet.signedOff
    ? { ...plain, kind: 'note', title: t('top.signedOff'), text: t('top.signedOffText', { shop: shop.name }) }
    : { ...plain, kind: 'note', title: t('top.onlyLook'), text: t('top.onlyLookText') };
}

function answerPart(sheet: KnownSheet): SheetWords['answer'] {
  const { locale, shop, state, given, mayAnswer, refused, revisionId, statement } = sheet;
  const t = translatorFor(locale, 'proof');
  if (state !== 'current' || !(given || mayAnswer || refused)) return null;
  const softPrints = softPrintNames(sheet.garments);
  const asked = ticksAsked({ soft: softPrints.length > 0 });
  const place = { ...sheet, hasForm: mayAnswer, asked };
  const refusal = refused && refusedWords(locale, refused, place);
  const form: FormWords = {
    words: answerWords(locale, shop.name, { lettered: sheet.lettered, softPrints }),
    statement,
    action: `${sheet.path}/answer`,
    revisionId,
    formKey: '',
    content: formContent(locale, refused, refusal, revisionId),
    closedUnder: given?.word === 'yes' && !refused ? t('answer.again') : null,
  };
  return {
    title: t('answer.title'),
    refused: refusal,
    given: given && givenWords(locale, given, sheet),
    form: mayAnswer ? form : null,
  };
}
