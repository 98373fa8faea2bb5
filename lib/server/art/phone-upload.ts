import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { environment } from '../env/environment';
import { allowAttempt, secondsUntilAllowed } from '../limits/attempts';
import { phoneToken, readPhoneToken } from './phone-upload-token';
import { type ArtUpload, type ReceivedArt, receiveArt } from './receive-art';

/** How long a code on the screen lets a phone hand pictures over. */
export const PHONE_MINUTES = 30;

/** The address a maker's phone opens to hand pictures over to a job, made for somebody who is signed in; null for no such job. */
export async function phoneLink(
  _maker: MakerAccess,
  jobId: string,
  now = new Date(),
): Promise<{ readonly url: string; readonly expiresAt: Date } | null> {
  const job = await reader().job.findUnique({ where: { id: jobId }, select: { id: true } });
  if (!job) return null;
  const expiresAt = new Date(now.getTime() + PHONE_MINUTES * 60_000);
  return { url: `${environment().publicUrl}/phone/${phoneToken({ jobId, expiresAt })}`, expiresAt };
}

declare const opened: unique symbol;

/** Proof that a phone came with a token of this shop that is still good. Only `openPhone` makes one. */
export type PhoneAccess = {
  readonly [opened]: true;
  readonly token: string;
  readonly jobId: string;
  readonly jobTitle: string;
  readonly expiresAt: Date;
};

export type OpenedPhone =
  | { readonly ok: true; readonly access: PhoneAccess }
  | { readonly ok: false; readonly reason: 'wrong' | 'overdue' | 'tooManyWrong' };

/**
 * The gate for phones. A made-up token is told apart from one of ours before the database is asked, counted against the
 * client it came from, and after too many nothing but a token of ours is looked at.
 */
export async function openPhone(token: string, client: string, now = new Date()): Promise<OpenedPhone> {
  const claim = readPhoneToken(token);
  if (!claim) {
    const mayTry = secondsUntilAllowed('wrongLink', client, now) === 0;
    allowAttempt('wrongLink', client, now);
    return { ok: false, reason: mayTry ? 'wrong' : 'tooManyWrong' };
  }
  if (claim.expiresAt <= now) return { ok: false, reason: 'overdue' };
  const job = await reader().job.findUnique({ where: { id: claim.jobId }, select: { title: true } });
  if (!job) return { ok: false, reason: 'wrong' };
  return { ok: true, access: { ...claim, token, jobTitle: job.title } as PhoneAccess };
}

/** Takes in a picture from a phone, as `receiveArt` does, but no more than so many with one code. */
export async function receiveFromPhone(
  { token, jobId }: PhoneAccess,
  upload: Omit<ArtUpload, 'jobId'>,
  now = new Date(),
): Promise<ReceivedArt | { readonly ok: false; readonly reason: 'tooManyPictures' }> {
  if (!allowAttempt('phonePicture', token, now)) return { ok: false, reason: 'tooManyPictures' };
  return receiveArt({ ...upload, jobId });
}
