import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalBytes, type JsonValue, sha256Hex, shortSeal } from '@/lib/domain/revision/canonical';
import rfc8785 from '../../data/rfc8785-jcs-vectors.json';
import fips180 from '../../data/sha256-vectors.json';

const text = (bytes: Uint8Array) => new TextDecoder('utf-8', { fatal: true }).decode(bytes);
const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');

function doubleOf(ieee754Hex: string): number {
  return Buffer.from(ieee754Hex, 'hex').readDoubleBE();
}

describe('canonical JSON', () => {
  // Source: RFC 8785, the RFC author's test data; hashes computed with an outside tool.
  it.each(rfc8785.vectors)('writes the $name file of RFC 8785 byte for byte', ({ input, canonicalUtf8Hex, sha256 }) => {
    const bytes = canonicalBytes(JSON.parse(input) as JsonValue);
    expect(hex(bytes)).toBe(canonicalUtf8Hex);
    expect(sha256Hex(bytes)).toBe(sha256);
  });

  // Source: RFC 8785, Appendix B.
  it.each(rfc8785.appendixB_numbers)('writes the number $ieee754Hex as RFC 8785 does', ({ ieee754Hex, json }) => {
    const value = doubleOf(ieee754Hex);
    if (json === null) expect(() => canonicalBytes(value)).toThrow();
    else expect(text(canonicalBytes(value))).toBe(json);
  });

  it('refuses half a surrogate pair wherever it stands (RFC 8785, 3.2.2.2)', () => {
    for (const value of ['\ud800', { a: ['\udc00x'] }, { '\ud800': 1 }]) expect(() => canonicalBytes(value)).toThrow();
  });

  it('writes the same bytes for the same value whatever the order of its keys', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue({ maxDepth: 2 })), (value) => {
        const turned = Object.fromEntries(Object.entries(value).reverse());
        expect(hex(canonicalBytes(turned as JsonValue))).toBe(hex(canonicalBytes(value as JsonValue)));
      }),
    );
  });

  it('is read back by any JSON reader as the value it came from', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(JSON.parse(text(canonicalBytes(value as JsonValue)))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });
});

describe('seals', () => {
  // Source: FIPS 180-4 examples; the last message is spelled out in words in the file.
  it.each(fips180.vectors)('hashes "$message" as FIPS 180-4 does', ({ message, sha256 }) => {
    expect(sha256Hex(message.startsWith('one million') ? 'a'.repeat(1_000_000) : message)).toBe(sha256);
  });

  it('agrees with the hash of the platform on any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(sha256Hex(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'));
      }),
    );
  });

  it('is labelled by its first eight digits in two groups', () => {
    expect(shortSeal(`7f3a19c2${'0'.repeat(56)}`)).toBe('7F3A-19C2');
  });
});
