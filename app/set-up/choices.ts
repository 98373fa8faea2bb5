import type { SelectOption } from '@/components/ui/select-field';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';

/** Every time zone that is known here, under its IANA name; UTC, which some lists leave out, among them. */
export function timeZoneChoices(): SelectOption[] {
  const names = new Set([...Intl.supportedValuesOf('timeZone'), 'UTC']);
  return [...names].sort().map((name) => ({ value: name, label: name.replaceAll('_', ' ') }));
}

/** Every ISO 4217 currency with its name, after an option that asks to choose one. */
export function currencyChoices(locale: Locale): SelectOption[] {
  const t = translatorFor(locale, 'set-up');
  const names = new Intl.DisplayNames(locale, { type: 'currency' });
  const known = Intl.supportedValuesOf('currency').map((code) => ({
    value: code,
    label: t('currencyOption', { code, name: names.of(code) ?? code }),
  }));
  return [{ value: '', label: t('chooseCurrency') }, ...known];
}
