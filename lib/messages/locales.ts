/** The languages the words exist in. A locale added here must bring every subject that `en` has. */
export const locales = ['en'] as const;

export type Locale = (typeof locales)[number];

export const defaultLocale: Locale = 'en';

/** Whether a stored or requested tag is a language the words exist in. */
export function isLocale(tag: string): tag is Locale {
  return (locales as readonly string[]).includes(tag);
}
