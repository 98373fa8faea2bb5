import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/** A value JSON can hold without loss. */
export type JsonValue =
  | null
  | boolean
  | number
  | string
  | readonly JsonValue[]
  | { readonly [key: string]: JsonValue | undefined };

/**
 * The canonical bytes of a value, UTF-8. Source: RFC 8785 (JSON Canonicalization Scheme). Throws for what JSON cannot
 * hold: the scheme is only defined for valid I-JSON.
 */
export function canonicalBytes(value: JsonValue): Uint8Array {
  const text = canonicalize(value);
  if (text === undefined) throw new Error(`canonicalBytes: ${typeof value} is not JSON`);
  if (!text.isWellFormed()) throw new Error('canonicalBytes: text holds half a surrogate pair');
  return utf8ToBytes(text);
}

/** SHA-256 (FIPS 180-4) of bytes or of a text's UTF-8 bytes, as 64 lower-case hex digits. */
export function sha256Hex(content: Uint8Array | string): string {
  return bytesToHex(sha256(typeof content === 'string' ? utf8ToBytes(content) : content));
}

/** The first eight hex digits in two groups: a label for people, never used to check anything. `7F3A-19C2` */
export function shortSeal(seal: string): string {
  return `${seal.slice(0, 4)}-${seal.slice(4, 8)}`.toUpperCase();
}
