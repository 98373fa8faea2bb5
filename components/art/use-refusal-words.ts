import { useCallback } from 'react';
import { useTranslations } from 'use-intl';
import type { Messages } from '@/lib/messages/catalogue';

/**
 * Puts into one sentence why a picture was not taken, from the code `uploadPicture` gives; `notReached` is said where the
 * server could not be asked, or said something the catalogue has no words for.
 */
export function useRefusalWords(notReached: string): (refused: { reason: string; kind: string }) => string {
  const art = useTranslations('art');
  return useCallback(
    ({ reason, kind }) => {
      if (reason === 'signedOut') return art('signIn');
      const key = `refused.${reason}` as `refused.${keyof Messages['art']['refused']}`;
      return art.has(key) ? art(key, { kind }) : notReached;
    },
    [art, notReached],
  );
}
