import type { Translator } from '@/lib/messages/translator';
import type { FormState } from '../ui/form-state';

/** Why an edit of a blank was refused as a whole. */
export type BlankRefusal =
  | 'noBlank'
  | 'changedElsewhere'
  | 'onHandSizes'
  | 'onHandColours'
  | 'sizeOrColourGone'
  | 'faults';

/** A refusal in one sentence; null where there is none. */
export function blankRefusalWords(t: Translator<'blanks'>, { refusal, detail }: FormState): string | null {
  if (refusal === null) return null;
  return t(`refusal.${refusal as BlankRefusal}`, { names: String(detail?.names ?? '') });
}
