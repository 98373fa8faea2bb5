import { z } from 'zod';
import { defaultLocale } from '@/lib/messages/locales';
import { addOwner, hashPassword } from '../auth/add-owner';
import { type PasswordFault, passwordFault } from '../auth/password-rules';
import { reader, write } from '../db/database';
import { newId } from '../db/new-id';
import { isUniqueClash } from '../db/refusals';
import { allowAttempt, secondsUntilAllowed } from '../limits/attempts';
import { dropSetUpCode, isSetUpCode } from '../secrets/set-up-code';

const currencies: ReadonlySet<string> = new Set(Intl.supportedValuesOf('currency'));

function isTimeZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
}

const line = (longest: number) =>
  z
    .string()
    .trim()
    .min(1, 'required')
    .max(longest, 'tooLong')
    .regex(/^[^\p{Cc}\p{Cs}]*$/u, 'invalid');

/** What is asked once, as it was typed. */
const shopToOpen = z.object({
  code: z.string().trim().min(1, 'required'),
  name: line(80),
  unit: z.enum(['in', 'cm'], 'required'),
  /** IANA time zone. */
  timeZone: z.string().refine(isTimeZone, 'invalid'),
  /** ISO 4217. */
  currency: z.string().refine((code) => currencies.has(code), 'invalid'),
  /** For customers; empty for none. */
  phone: line(40).or(z.literal('')),
  ownerName: line(80),
  /** RFC 5321, section 4.5.3.1.3 leaves 254 characters for an address in a path. */
  email: z.string().trim().min(1, 'required').max(254, 'tooLong').pipe(z.email('email')),
  password: z.string().min(1, 'required'),
});
export type ShopToOpen = z.input<typeof shopToOpen>;
export type ShopField = keyof ShopToOpen;
export type ShopMistake = 'required' | 'tooLong' | 'invalid' | 'email' | 'wrongCode' | PasswordFault;

export type OpenedShop =
  | { ok: true; userId: string }
  | { ok: false; reason: 'ownerExists' | 'tooMany' }
  | { ok: false; reason: 'mistakes'; mistakes: Readonly<Partial<Record<ShopField, ShopMistake>>> };

function mistakesOf(error: z.ZodError): Partial<Record<ShopField, ShopMistake>> {
  const mistakes: Partial<Record<ShopField, ShopMistake>> = {};
  for (const { path, message } of error.issues) mistakes[path[0] as ShopField] ??= message as ShopMistake;
  return mistakes;
}

/**
 * Opens the shop with its owner, once: all of it or nothing, and one shop however many ask at the same moment. Needs the
 * one-time code from the terminal; a client has five wrong ones in a quarter of an hour. `client` is its address.
 */
export async function openShop(input: ShopToOpen, client: string): Promise<OpenedShop> {
  const now = new Date();
  if (await reader().shop.findFirst({ select: { id: true } })) return { ok: false, reason: 'ownerExists' };
  if (secondsUntilAllowed('setUpCode', client, now) > 0) return { ok: false, reason: 'tooMany' };
  const read = shopToOpen.safeParse(input);
  if (!read.success) return { ok: false, reason: 'mistakes', mistakes: mistakesOf(read.error) };
  const { code, password, ownerName, email, phone, ...shop } = read.data;
  if (!isSetUpCode(code)) {
    allowAttempt('setUpCode', client, now);
    return { ok: false, reason: 'mistakes', mistakes: { code: 'wrongCode' } };
  }
  const fault = await passwordFault(password, [ownerName, shop.name, email]);
  if (fault) return { ok: false, reason: 'mistakes', mistakes: { password: fault } };

  const passwordHash = await hashPassword(password);
  const shopId = newId();
  try {
    const owner = await write(async (tx) => {
      await tx.shop.create({
        data: {
          id: shopId,
          slot: 1,
          ...shop,
          locale: defaultLocale,
          statement: '',
          replyEmail: email,
          replyPhone: phone || null,
          createdAt: now,
        },
      });
      return addOwner(tx, { shopId, name: ownerName, email, passwordHash });
    });
    dropSetUpCode();
    return { ok: true, userId: owner.userId };
  } catch (error) {
    if (isUniqueClash(error)) return { ok: false, reason: 'ownerExists' };
    throw error;
  }
}
