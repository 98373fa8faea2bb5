import { z } from 'zod';
import type { Recipient } from './mail-data';

/** A message ready to be sent. */
export interface MailMessage {
  readonly messageId: string;
  readonly date: Date;
  readonly from: { readonly name: string; readonly address: string };
  readonly to: { readonly name: string; readonly address: string };
  readonly replyTo: string | null;
  readonly subject: string;
  readonly text: string;
  readonly html: string;
}

/** RFC 5321, section 4.5.3.1.3: a path has 256 characters, two of them the angle brackets. */
const longestAddress = 254;
/** Common practice, no source: mail programs cut a subject off long before. */
const longestHeader = 200;

const address = z.email().max(longestAddress);

/** Whether a message can be addressed to `text`. */
export function isMailAddress(text: string): boolean {
  return address.safeParse(text).success;
}

/** The bare address of `Our Shop <hello@example.org>`. */
export function addressOf(mailFrom: string): string {
  return /<([^<>]+)>\s*$/.exec(mailFrom)?.[1] ?? mailFrom.trim();
}

/** Words as they may stand in a header: one line without control characters, so that they cannot begin another header. */
export function headerText(text: string): string {
  const line = text.replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, ' ').trim();
  const characters = [...line];
  return characters.length <= longestHeader ? line : `${characters.slice(0, longestHeader - 1).join('')}…`;
}

/** The address and name of a recipient; null when the address is none that mail can go to. */
export function recipientOf({ name, email }: Recipient): MailMessage['to'] | null {
  return isMailAddress(email) ? { name: headerText(name ?? ''), address: email } : null;
}
