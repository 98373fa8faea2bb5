/** Why an amount could not be read. */
export type AmountRefusal = 'empty' | 'notAnAmount' | 'tooMuch';
export type ParsedAmount =
  | { readonly ok: true; readonly minor: number }
  | { readonly ok: false; readonly reason: AmountRefusal };

/** The most that one thing can cost, in minor units of whatever currency: what is more is a slip of the finger. */
const MOST_MINOR = 1_000_000_000;

/** How many decimals a currency is written with: 2 for USD, 0 for JPY. `currency` is an ISO 4217 code; Intl knows their decimals. */
export function currencyDecimals(currency: string): number {
  const { maximumFractionDigits } = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions();
  return maximumFractionDigits ?? 2;
}

/**
 * Reads an amount as it is typed beside its currency: `4`, `4.20`, `4,2`. Gives minor units of the currency, or why it
 * could not be read; more decimals than the currency has are no amount.
 */
export function parseAmount(written: string, currency: string): ParsedAmount {
  const tidy = written.trim();
  if (tidy === '') return { ok: false, reason: 'empty' };
  const [, whole = '', decimals = ''] = /^(\d{1,9})(?:[.,](\d+))?$/.exec(tidy) ?? [];
  const digits = currencyDecimals(currency);
  if (whole === '' || decimals.length > digits) return { ok: false, reason: 'notAnAmount' };
  const minor = Number(whole + decimals.padEnd(digits, '0'));
  return minor > MOST_MINOR ? { ok: false, reason: 'tooMuch' } : { ok: true, minor };
}

/** An amount as its field shows it, without the currency: `4.20`. Reading it again gives the same amount. */
export function amountText(minor: number, currency: string): string {
  const digits = currencyDecimals(currency);
  return (minor / 10 ** digits).toFixed(digits);
}

/** An amount with its currency, as the language writes it: `$4.20`. */
export function formatAmount(minor: number, currency: string, locale: string): string {
  return new Intl.NumberFormat(locale, { style: 'currency', currency }).format(
    minor / 10 ** currencyDecimals(currency),
  );
}

/** Hundredths of a currency's unit, as charts give costs, in its minor units; a half goes up. */
export function minorFromHundredths(hundredths: number, currency: string): number {
  return Math.round(hundredths * 10 ** (currencyDecimals(currency) - 2));
}

/** Minor units of a currency in hundredths of its unit, as charts give costs. */
export function hundredthsFromMinor(minor: number, currency: string): number {
  return Math.round(minor * 10 ** (2 - currencyDecimals(currency)));
}
