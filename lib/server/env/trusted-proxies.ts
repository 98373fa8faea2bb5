import { BlockList, isIP } from 'node:net';

/** The peers whose word about the client's address is believed. */
export type TrustedProxies = { isTrusted: (address: string) => boolean };

function familyOf(address: string): 'ipv4' | 'ipv6' {
  return isIP(address) === 6 ? 'ipv6' : 'ipv4';
}

/**
 * Reads a comma-separated list of addresses (`10.0.0.7`) and networks (`10.0.0.0/8`), IPv4 or IPv6.
 * Null when an entry is neither.
 */
export function parseTrustedProxies(list: string): TrustedProxies | null {
  const trusted = new BlockList();
  for (const entry of list.split(',').map((part) => part.trim())) {
    if (entry === '') continue;
    const [address = '', prefix, ...more] = entry.split('/');
    const version = isIP(address);
    if (version === 0 || more.length > 0) return null;
    if (prefix === undefined) {
      trusted.addAddress(address, familyOf(address));
      continue;
    }
    const bits = Number(prefix);
    if (!/^\d{1,3}$/.test(prefix) || bits > (version === 6 ? 128 : 32)) return null;
    trusted.addSubnet(address, bits, familyOf(address));
  }
  return { isTrusted: (address) => isIP(address) !== 0 && trusted.check(address, familyOf(address)) };
}
