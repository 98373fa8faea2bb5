/** The four things a signer confirms one by one; none is ever ticked for them. */
export const TICKS = ['spelling', 'counts', 'colours', 'placement'] as const;

/** Everything that can be asked for: a fifth only where a print comes out soft and is made all the same. */
export const EVERY_TICK = [...TICKS, 'soft'] as const;
export type Tick = (typeof EVERY_TICK)[number];

/** What there is to tick before a revision can be said yes to; `soft`: something of it comes out soft. */
export function ticksAsked({ soft }: { readonly soft: boolean }): readonly Tick[] {
  return soft ? EVERY_TICK : TICKS;
}

export type AnswerWord = 'yes' | 'change';

/** Longest name and longest change a signer can type. */
export const LONGEST_SIGNED_NAME = 120;
export const LONGEST_CHANGE = 4_000;

export type AnswerRefusal = 'ticksMissing' | 'nameMissing' | 'wordsMissing' | 'nameTooLong' | 'wordsTooLong';

/**
 * Why an answer cannot be taken as given, or null when it can. A yes needs every tick that was asked for and a name; a
 * change needs words.
 */
export function answerRefusal(
  answer: {
    readonly word: AnswerWord;
    readonly ticks: readonly Tick[];
    readonly typedName: string;
    readonly words: string;
  },
  asked: readonly Tick[],
): AnswerRefusal | null {
  if (answer.typedName.trim().length > LONGEST_SIGNED_NAME) return 'nameTooLong';
  if (answer.word === 'change') {
    if (answer.words.trim() === '') return 'wordsMissing';
    return answer.words.trim().length > LONGEST_CHANGE ? 'wordsTooLong' : null;
  }
  if (!asked.every((tick) => answer.ticks.includes(tick))) return 'ticksMissing';
  return answer.typedName.trim() === '' ? 'nameMissing' : null;
}
