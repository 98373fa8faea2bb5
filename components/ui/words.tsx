'use client';

import type { ReactNode } from 'react';
import { IntlProvider } from 'use-intl/react';
import type { Messages } from '@/lib/messages/catalogue';
import type { Locale } from '@/lib/messages/locales';

type WordsProps = {
  locale: Locale;
  /** The subjects the client components below use: `subjectsFor(locale, […])`. */
  messages: Partial<Messages>;
  /** IANA name; dates in messages are shown in it on server and browser alike. */
  timeZone: string;
  children: ReactNode;
};

/** Makes words available to client components below it, through `useTranslations('subject')`. */
export function Words({ locale, messages, timeZone, children }: WordsProps) {
  return (
    <IntlProvider locale={locale} messages={messages} timeZone={timeZone}>
      {children}
    </IntlProvider>
  );
}
