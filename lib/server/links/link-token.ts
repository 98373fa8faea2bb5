import { createHmac, timingSafeEqual } from 'node:crypto';
import { parse, stringify } from 'uuid';
import { type LinkKey, secrets } from '../secrets/secrets';

/** What a token says: which link, which of its generations, and the version of the key it was made with. */
export interface LinkClaim {
  readonly id: string;
  readonly generation: number;
  readonly keyVersion: number;
}

// 16 bytes of id, 3 of generation, 1 of key version, 16 of MAC: 36 bytes are 48 characters of base64url (RFC 4648,
// section 5) with no bit left over, so a token can be written in one way only.
const claimBytes = 20;
const macBytes = 16;
const tokenPattern = /^[A-Za-z0-9_-]{48}$/;
export const lastGeneration = 0xff_ff_ff;

/** Keeps these MACs apart from any other use of the key. */
const purpose = 'yokemark link 1';

function claimOf({ id, generation, keyVersion }: LinkClaim): Buffer {
  const claim = Buffer.alloc(claimBytes);
  claim.set(parse(id), 0);
  claim.writeUIntBE(generation, 16, 3);
  claim.writeUInt8(keyVersion, 19);
  return claim;
}

/** HMAC-SHA-256, its first 128 bits (RFC 2104, section 5, allows half of the hash). */
function macOf(claim: Uint8Array, { key }: LinkKey): Buffer {
  return createHmac('sha256', key).update(purpose).update(claim).digest().subarray(0, macBytes);
}

/** The secret part of a link's address. It is made anew each time and stored nowhere. */
export function linkToken(link: LinkClaim): string {
  const key = secrets().linkKeys.find(({ version }) => version === link.keyVersion);
  if (!key) throw new Error(`The key of version ${link.keyVersion} that a link was made with is not kept.`);
  const claim = claimOf(link);
  return Buffer.concat([claim, macOf(claim, key)]).toString('base64url');
}

/**
 * What a token claims, and whether this shop made it. Null when it is not of the form of a token. The comparison takes
 * the same time wherever the difference is.
 */
export function readToken(token: string): { claim: LinkClaim; genuine: boolean } | null {
  if (!tokenPattern.test(token)) return null;
  const bytes = Buffer.from(token, 'base64url');
  const claimed = bytes.subarray(0, claimBytes);
  const keyVersion = claimed.readUInt8(19);
  const { linkKeys } = secrets();
  const key = linkKeys.find(({ version }) => version === keyVersion);
  const matches = timingSafeEqual(bytes.subarray(claimBytes), macOf(claimed, key ?? linkKeys[0]));
  const generation = claimed.readUIntBE(16, 3);
  // Any 16 bytes are an id to look for; only ids this app makes are ids to the library.
  const id = isUuid(claimed.subarray(0, 16)) ? stringify(claimed, 0) : '';
  return { claim: { id, generation, keyVersion }, genuine: matches && key !== undefined && id !== '' };
}

function isUuid(bytes: Uint8Array): boolean {
  return ((bytes[6] ?? 0) & 0xf0) === 0x70 && ((bytes[8] ?? 0) & 0xc0) === 0x80;
}
