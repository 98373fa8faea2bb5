import { createHmac, timingSafeEqual } from 'node:crypto';
import { parse, stringify, version } from 'uuid';
import { type LinkKey, secrets } from '../secrets/secrets';

/** What the token of a phone says: to which job pictures go, and until when. */
export type PhoneClaim = { readonly jobId: string; readonly expiresAt: Date };

// 16 bytes of job, 4 of seconds since 1970 (good to the year 2106), 1 of key version, 18 of MAC: 39 bytes are 52 characters
// of base64url (RFC 4648, section 5) with no bit left over, so a token can be written in one way only.
const claimBytes = 21;
const macBytes = 18;
const tokenPattern = /^[A-Za-z0-9_-]{52}$/;

/** Keeps these MACs apart from any other use of the key. */
const purpose = 'yokemark phone upload 1';

/** HMAC-SHA-256, its first 144 bits (RFC 2104, section 5, allows half of the hash and more). */
function macOf(claim: Uint8Array, { key }: LinkKey): Buffer {
  return createHmac('sha256', key).update(purpose).update(claim).digest().subarray(0, macBytes);
}

/** The secret part of the address a phone opens. Nothing of it is stored: the database alone opens nothing. */
export function phoneToken({ jobId, expiresAt }: PhoneClaim): string {
  const [key] = secrets().linkKeys;
  const claim = Buffer.alloc(claimBytes);
  claim.set(parse(jobId), 0);
  claim.writeUInt32BE(Math.floor(expiresAt.getTime() / 1000), 16);
  claim.writeUInt8(key.version, 20);
  return Buffer.concat([claim, macOf(claim, key)]).toString('base64url');
}

/** What a token of this shop's own making says; null for any other text. Takes the same time wherever the difference is. */
export function readPhoneToken(token: string): PhoneClaim | null {
  if (!tokenPattern.test(token)) return null;
  const bytes = Buffer.from(token, 'base64url');
  const claim = bytes.subarray(0, claimBytes);
  const { linkKeys } = secrets();
  const key = linkKeys.find((each) => each.version === claim.readUInt8(20));
  const matches = timingSafeEqual(bytes.subarray(claimBytes), macOf(claim, key ?? linkKeys[0]));
  if (!(matches && key)) return null;
  const jobId = stringify(claim.subarray(0, 16));
  return version(jobId) === 7 ? { jobId, expiresAt: new Date(claim.readUInt32BE(16) * 1000) } : null;
}
