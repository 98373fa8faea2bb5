import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clientAddress } from '@/lib/server/edge/request-headers';
import { parseTrustedProxies, type TrustedProxies } from '@/lib/server/env/trusted-proxies';

function trusting(list: string): TrustedProxies {
  const proxies = parseTrustedProxies(list);
  if (!proxies) throw new Error(`not addresses: ${list}`);
  return proxies;
}

// RFC 7239 section 5.2 and 8.1: each proxy appends to the right, and only hops that are trusted can be believed.
describe('the address a request comes from', () => {
  it('is the peer whatever the header says, when no proxy is trusted', () => {
    fc.assert(
      fc.property(fc.ipV4(), fc.oneof(fc.ipV4(), fc.string()), (peer, claimed) => {
        expect(clientAddress(peer, claimed, trusting(''))).toBe(peer);
      }),
    );
  });

  it('is what the trusted proxy appended, not what the client wrote before it', () => {
    expect(clientAddress('10.0.0.7', '1.2.3.4, 203.0.113.9', trusting('10.0.0.7'))).toBe('203.0.113.9');
  });

  it('is found behind several trusted proxies', () => {
    const trusted = trusting('10.0.0.0/8');
    expect(clientAddress('10.0.0.7', '1.2.3.4, 203.0.113.9, 10.0.0.8', trusted)).toBe('203.0.113.9');
    expect(clientAddress('10.0.0.7', '10.0.0.9, 10.0.0.8', trusted)).toBe('10.0.0.9');
  });

  it('is the last believable hop when the rest is nonsense', () => {
    const trusted = trusting('10.0.0.7');
    expect(clientAddress('10.0.0.7', 'unknown', trusted)).toBe('10.0.0.7');
    expect(clientAddress('10.0.0.7', '', trusted)).toBe('10.0.0.7');
    expect(clientAddress('10.0.0.7', undefined, trusted)).toBe('10.0.0.7');
    expect(clientAddress('10.0.0.7', '203.0.113.9, <script>', trusted)).toBe('10.0.0.7');
  });

  // RFC 4291 section 2.5.5.2
  it('is one and the same however IPv4 is written inside IPv6', () => {
    expect(clientAddress('::ffff:192.0.2.1', undefined, trusting(''))).toBe('192.0.2.1');
    expect(clientAddress('::ffff:10.0.0.7', '192.0.2.1', trusting('10.0.0.7'))).toBe('192.0.2.1');
    expect(clientAddress('FE80::1%eth0', undefined, trusting(''))).toBe('fe80::1');
  });
});
