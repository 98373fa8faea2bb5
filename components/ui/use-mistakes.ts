'use client';

import { useTranslations } from 'use-intl';
import { type KeyedTranslator, mistakeWords } from '@/lib/messages/mistake-words';
import type { FieldMistake } from './form-notice';
import type { FormState } from './form-state';

/** The mistakes of a form in words: one field's, and all of them for the list above the form. */
export type Mistakes = {
  readonly of: (field: string) => string | undefined;
  readonly all: readonly FieldMistake[];
};

/**
 * Puts the codes of refused fields into words. `idOf` gives the id a field has on the page where that is not its name,
 * as with several forms of one kind.
 */
export function useMistakes(
  t: KeyedTranslator,
  { mistakes }: Pick<FormState, 'mistakes'>,
  idOf: (field: string) => string = (field) => field,
): Mistakes {
  const general = useTranslations('form');
  const words = new Map(
    Object.entries(mistakes).map(([field, code]) => [field, mistakeWords(t, general, field, code)]),
  );
  return { of: (field) => words.get(field), all: [...words].map(([field, text]) => ({ fieldId: idOf(field), text })) };
}
