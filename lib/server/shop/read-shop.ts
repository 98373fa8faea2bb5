import type { LengthUnit } from '@/lib/domain/measure/length';
import { defaultLocale, isLocale, type Locale } from '@/lib/messages/locales';
import { reader } from '../db/database';

/** The shop, as everything that is made in its name needs it. */
export type Shop = {
  readonly id: string;
  readonly name: string;
  readonly unit: LengthUnit;
  readonly timeZone: string;
  readonly currency: string;
  readonly locale: Locale;
  readonly statement: string;
  readonly replyEmail: string | null;
  readonly replyPhone: string | null;
};

/** The shop, or null before it was set up. */
export async function readShop(): Promise<Shop | null> {
  const row = await reader().shop.findUnique({ where: { slot: 1 } });
  if (!row) return null;
  const { id, name, timeZone, currency, statement, replyEmail, replyPhone } = row;
  return {
    id,
    name,
    unit: row.unit === 'cm' ? 'cm' : 'in',
    timeZone,
    currency,
    locale: isLocale(row.locale) ? row.locale : defaultLocale,
    statement,
    replyEmail,
    replyPhone,
  };
}

/** The shop. Throws before it was set up: nothing can be made in the name of no shop. */
export async function requireShop(): Promise<Shop> {
  const shop = await readShop();
  if (!shop) throw new Error('the shop is not set up');
  return shop;
}
