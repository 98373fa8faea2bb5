import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amountText,
  currencyDecimals,
  formatAmount,
  hundredthsFromMinor,
  minorFromHundredths,
  parseAmount,
} from '@/lib/domain/money/amount';

/** Minor units by ISO 4217:2015, table A.1 (from memory). */
const DECIMALS = { USD: 2, EUR: 2, GBP: 2, JPY: 0, KRW: 0, KWD: 3, BHD: 3 } as const;

const currency = fc.constantFrom(...(Object.keys(DECIMALS) as (keyof typeof DECIMALS)[]));

describe('an amount', () => {
  it('has as many decimals as its currency', () => {
    for (const [code, decimals] of Object.entries(DECIMALS)) expect(currencyDecimals(code)).toBe(decimals);
  });

  it('is read again from what its field shows', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000_000 }), currency, (minor, code) => {
        expect(parseAmount(amountText(minor, code), code)).toEqual({ ok: true, minor });
      }),
    );
  });

  it.each([
    ['4', 'USD', 400],
    [' 4.2 ', 'USD', 420],
    ['4,20', 'EUR', 420],
    ['420', 'JPY', 420],
    ['1.250', 'KWD', 1_250],
  ])('reads %j in %s', (written, code, minor) => {
    expect(parseAmount(written, code)).toEqual({ ok: true, minor });
  });

  it.each([
    ['', 'USD', 'empty'],
    ['$4', 'USD', 'notAnAmount'],
    ['-4', 'USD', 'notAnAmount'],
    ['4.205', 'USD', 'notAnAmount'],
    ['4.2', 'JPY', 'notAnAmount'],
    ['four', 'USD', 'notAnAmount'],
    ['99999999', 'USD', 'tooMuch'],
  ])('refuses %j in %s', (written, code, reason) => {
    expect(parseAmount(written, code)).toEqual({ ok: false, reason });
  });

  it('is said with its currency', () => {
    expect(formatAmount(420, 'USD', 'en')).toBe('$4.20');
    expect(formatAmount(420, 'JPY', 'en')).toBe('¥420');
  });

  it('goes into a chart as hundredths and comes back', () => {
    expect([minorFromHundredths(420, 'USD'), minorFromHundredths(42_000, 'JPY')]).toEqual([420, 420]);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), fc.constantFrom('USD', 'JPY'), (minor, code) => {
        expect(minorFromHundredths(hundredthsFromMinor(minor, code), code)).toBe(minor);
      }),
    );
  });
});
