import type {} from 'use-intl';
import { english } from './english';
import type { Locale } from './locales';

/** Every subject with its keys, as English has them: the shape all other languages must have. */
export type Messages = typeof english;
export type Subject = keyof Messages;

declare module 'use-intl' {
  interface AppConfig {
    Locale: Locale;
    Messages: Messages;
  }
}

const catalogue: Record<Locale, Messages> = { en: english };

/** All words of one language, by subject. */
export function messagesFor(locale: Locale): Messages {
  return catalogue[locale];
}

/** Only the named subjects, for pages that hand words to the browser and should send no more than they use. */
export function subjectsFor<Name extends Subject>(locale: Locale, subjects: readonly Name[]): Pick<Messages, Name> {
  const all = catalogue[locale];
  return Object.fromEntries(subjects.map((subject) => [subject, all[subject]])) as Pick<Messages, Name>;
}
