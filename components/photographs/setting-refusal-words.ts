import type { Messages } from '@/lib/messages/catalogue';
import type { Translator } from '@/lib/messages/translator';

/** Why points cannot be meant or were not kept, in one sentence; null where nothing is wrong. */
export function refusalWords(t: Translator<'photographs'>, refusal: string | null): string | null {
  return refusal === null
    ? null
    : t(`setting.refused.${refusal as keyof Messages['photographs']['setting']['refused']}`);
}
