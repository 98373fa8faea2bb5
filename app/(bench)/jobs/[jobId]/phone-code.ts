'use server';

import { headers } from 'next/headers';
import type { PhoneCode } from '@/components/art/phone-code';
import { phoneLink } from '@/lib/server/art/phone-upload';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { reach } from '@/lib/server/links/reach';
import { qrCode } from '@/lib/server/qr/qr-code';

/** A code for the maker's phone; null where nobody is signed in, or the job is gone. */
export async function phoneCodeAction(jobId: string): Promise<PhoneCode | null> {
  const maker = await makerFromHeaders(await headers());
  const link = maker && (await phoneLink(maker, jobId));
  if (!link) return null;
  const { url, expiresAt } = link;
  return { url, expiresAt, qr: qrCode(url), reach: reach(url) };
}
