import { LONGEST_CHANGE, LONGEST_SIGNED_NAME, TICKS, type Tick } from '@/lib/domain/revision/answer';
import type { Translator } from '@/lib/messages/translator';
import type { FormContent } from './answer-form';
import { tickId } from './tick-id';

/** Why an answer was not taken. `forgotten`: it is no longer known what was typed. */
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

const FIELDS: Partial<Record<RefusedReason, 'ticks' | 'name' | 'words'>> = {
  ticksMissing: 'ticks',
  nameMissing: 'name',
  nameTooLong: 'name',
  wordsMissing: 'words',
  wordsTooLong: 'words',
  yesWithChange: 'words',
};

/** The id of the field that has to be put right, or null where the refusal is about none. */
export function mistakenFieldId({ reason, ticks }: RefusedForm): string | null {
  const field = FIELDS[reason] ?? null;
  return field === 'ticks' ? tickId(TICKS.find((tick) => !ticks.includes(tick)) ?? TICKS[0]) : field;
}

/** What stands in the form: what was typed into the refused one. Ticks are kept only for the revision they were about. */
export function formContent(t: Translator<'proof'>, refused: RefusedForm | null, revisionId: string): FormContent {
  if (!refused) return { ticked: [], typedName: '', words: '', changing: false, mistakes: {} };
  const field = FIELDS[refused.reason];
  return {
    ticked: refused.revisionId === revisionId ? refused.ticks : [],
    typedName: refused.typedName,
    words: refused.words,
    changing: refused.words !== '' || refused.word === 'change',
    mistakes: field ? { [field]: field === 'ticks' ? t('refused.tickMissing') : fieldWords(t, refused.reason) } : {},
  };
}

function fieldWords(t: Translator<'proof'>, reason: RefusedReason): string {
  return refusalWords(t, reason, { shop: '', current: '' });
}

/** A refusal in one sentence: what is wrong and what to do. */
export function refusalWords(
  t: Translator<'proof'>,
  reason: RefusedReason,
  { shop, current }: { shop: string; current: string },
): string {
  const longest = reason === 'nameTooLong' ? LONGEST_SIGNED_NAME : LONGEST_CHANGE;
  return t(`refused.${reason}`, { shop, current, longest });
}
