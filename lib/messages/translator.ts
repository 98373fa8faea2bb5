import { createTranslator, type IntlError, type NamespaceKeys, type NestedKeyOf } from 'use-intl/core';
import { type Messages, messagesFor } from './catalogue';
import type { Locale } from './locales';

export type MessageNamespace = NamespaceKeys<Messages, NestedKeyOf<Messages>>;

function throwOnError(error: IntlError): never {
  throw error;
}

function makeTranslator<const Namespace extends MessageNamespace>(
  locale: Locale,
  namespace: Namespace,
  timeZone?: string,
) {
  return createTranslator<Messages, Namespace>({
    locale,
    messages: messagesFor(locale),
    namespace,
    timeZone,
    onError: throwOnError,
  });
}

export type Translator<Namespace extends MessageNamespace> = ReturnType<typeof makeTranslator<Namespace>>;

// A translator keeps the messages it has parsed, so one is kept for each language, subject and zone.
const made = new Map<string, unknown>();

/**
 * The words of one subject on the server: `translatorFor('en', 'job')('title')`.
 * `timeZone` (IANA name) is needed where a message formats a date. A missing word or value throws.
 */
export function translatorFor<const Namespace extends MessageNamespace>(
  locale: Locale,
  namespace: Namespace,
  timeZone?: string,
): Translator<Namespace> {
  const key = `${locale} ${namespace} ${timeZone ?? ''}`;
  const known = made.get(key);
  if (known) return known as Translator<Namespace>;
  const translator = makeTranslator(locale, namespace, timeZone);
  made.set(key, translator);
  return translator;
}
