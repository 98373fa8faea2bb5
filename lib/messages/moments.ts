import type { Locale } from './locales';

const formats = new Map<string, Intl.DateTimeFormat>();

function format(locale: Locale, zone: string, name: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = `${locale} ${zone} ${name}`;
  const known = formats.get(key) ?? new Intl.DateTimeFormat(locale, { ...options, timeZone: zone });
  formats.set(key, known);
  return known;
}

/** A moment on the shop's own clock, to the minute: `Thu, Nov 26, 2026, 2:00 PM`. `zone` is an IANA name. */
export function momentWords(locale: Locale, zone: string, moment: Date): string {
  const options = {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: 'numeric',
    minute: '2-digit',
  } as const;
  return format(locale, zone, 'moment', options).format(moment);
}

/** The same without the year, for what is near: `Thu, Nov 26, 2:00 PM`. */
export function nearMomentWords(locale: Locale, zone: string, moment: Date): string {
  const options = { weekday: 'short', day: 'numeric', month: 'short', hour: 'numeric', minute: '2-digit' } as const;
  return format(locale, zone, 'near', options).format(moment);
}

/** For people who may be elsewhere, its clock named: `Thursday, November 26, 2026 at 2:00 PM Eastern Time`. */
export function zonedMomentWords(locale: Locale, zone: string, moment: Date): string {
  const options = {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    hour: 'numeric',
    minute: '2-digit',
    timeZoneName: 'longGeneric',
  } as const;
  return format(locale, zone, 'zoned', options).format(moment);
}
