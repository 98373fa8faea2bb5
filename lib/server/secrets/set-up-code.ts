import { createHash, randomInt, timingSafeEqual } from 'node:crypto';
import { readFileSync, rmSync } from 'node:fs';
import { environment } from '../env/environment';
import { replaceSecret } from './secrets-file';

/**
 * Letters and digits that are not taken for one another when read off a screen (Crockford's base 32, which leaves out
 * I, L, O and U). Twelve of them are 60 bits.
 */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const codeLength = 12;

function hashPath(): string {
  return `${environment().secretsFile}.set-up`;
}

/** A typed code as it was printed: letters in capitals, without spaces and dashes, look-alikes read as what they mean. */
function tidy(typed: string): string {
  return typed
    .toUpperCase()
    .replace(/[\s\p{Pd}]/gu, '')
    .replaceAll('O', '0')
    .replace(/[IL]/g, '1');
}

function hashOf(code: string): Buffer {
  return createHash('sha256').update(tidy(code)).digest();
}

/**
 * Makes a new one-time code that lets whoever can see this computer's terminal set up the shop; the one before it no
 * longer works. Only its hash is kept.
 */
export function makeSetUpCode(): string {
  const letters = Array.from({ length: codeLength }, () => alphabet[randomInt(alphabet.length)]).join('');
  replaceSecret(hashPath(), hashOf(letters).toString('hex'));
  return letters.replace(/(.{4})(?=.)/g, '$1-');
}

/** Whether `typed` is the code that was made last and has not been used. */
export function isSetUpCode(typed: string): boolean {
  let kept: Buffer;
  try {
    kept = Buffer.from(readFileSync(hashPath(), 'utf8'), 'hex');
  } catch {
    return false;
  }
  const given = hashOf(typed);
  return kept.length === given.length && timingSafeEqual(kept, given);
}

/** Ends the code: it has done its work. */
export function dropSetUpCode(): void {
  rmSync(hashPath(), { force: true });
}
