import { LONGEST_CHANGE, LONGEST_SIGNED_NAME, type Tick } from '@/lib/domain/revision/answer';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { tickId } from './tick-id';

/** Why an answer was not taken. */
export type RefusedReason =
  | 'ticksMissing'
  | 'nameMissing'
  | 'nameTooLong'
  | 'wordsMissing'
  | 'wordsTooLong'
  | 'yesWithChange'
  | 'replaced'
  | 'withdrawn'
  | 'alreadySignedOff'
  | 'mayNotSign'
  | 'noRevision';

/** An answer that was not taken, with what was typed into it. */
export type RefusedForm = {
  readonly reason: RefusedReason;
  /** The revision it was about. */
  readonly revisionId: string;
  readonly word: 'yes' | 'change';
  readonly ticks: readonly Tick[];
  readonly typedName: string;
  readonly words: string;
};

/** Says that an answer was not taken, why, and what to do. */
export type RefusedWords = {
  readonly title: string;
  readonly sentence: string;
  /** The field that has to be put right, where the refusal is about one and the form is there. */
  readonly fieldId: string | null;
  /** What was typed, where no form shows it again. */
  readonly typed: { readonly title: string; readonly text: string } | null;
};

/** What stands in the form when it is shown: nothing, or what was typed into one that was refused. */
export type FormContent = {
  readonly ticked: readonly Tick[];
  readonly typedName: string;
  readonly words: string;
  /** Whether the change is opened to be written. */
  readonly changing: boolean;
  /** What is wrong with a field, in one sentence. */
  readonly mistakes: { readonly ticks?: string; readonly name?: string; readonly words?: string };
};

const FIELDS: Partial<Record<RefusedReason, keyof FormContent['mistakes']>> = {
  ticksMissing: 'ticks',
  nameMissing: 'name',
  nameTooLong: 'name',
  wordsMissing: 'words',
  wordsTooLong: 'words',
  yesWithChange: 'words',
};

type Place = {
  shop: { name: string };
  currentNumber: number | null;
  /** Whether a form below shows again what was typed. */
  hasForm: boolean;
  /** What there was to tick, in the order it stands. */
  asked: readonly Tick[];
};

/** Puts a refusal into words. What was typed is never lost: it stands in the form, or here. */
export function refusedWords(
  locale: Locale,
  refused: RefusedForm,
  { shop, currentNumber, hasForm, asked }: Place,
): RefusedWords {
  const t = translatorFor(locale, 'proof');
  return {
    title: t('refused.title'),
    sentence: t(`refused.${refused.reason}`, {
      shop: shop.name,
      current: String(currentNumber ?? ''),
      things: String(asked.length),
      longest: refused.reason === 'nameTooLong' ? LONGEST_SIGNED_NAME : LONGEST_CHANGE,
    }),
    fieldId: hasForm ? mistakenFieldId(refused, asked) : null,
    typed: !hasForm && refused.words ? { title: t('refused.typed'), text: refused.words } : null,
  };
}

/** What stands in the form. Ticks are kept only for the revision they were about. */
export function formContent(
  locale: Locale,
  refused: RefusedForm | null,
  words: RefusedWords | null,
  revisionId: string,
): FormContent {
  if (!(refused && words)) return { ticked: [], typedName: '', words: '', changing: false, mistakes: {} };
  const field = FIELDS[refused.reason];
  const mistake = field === 'ticks' ? translatorFor(locale, 'proof')('refused.tickMissing') : words.sentence;
  return {
    ticked: refused.revisionId === revisionId ? refused.ticks : [],
    typedName: refused.typedName,
    words: refused.words,
    changing: refused.words !== '' || refused.word === 'change',
    mistakes: field ? { [field]: mistake } : {},
  };
}

function mistakenFieldId({ reason, ticks }: RefusedForm, asked: readonly Tick[]): string | null {
  const field = FIELDS[reason] ?? null;
  if (field !== 'ticks') return field;
  const missing = asked.find((tick) => !ticks.includes(tick)) ?? asked[0];
  return missing ? tickId(missing) : null;
}
