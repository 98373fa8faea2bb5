import type { IncomingMessage } from 'node:http';
import { isIP } from 'node:net';
import type { TrustedProxies } from '../env/trusted-proxies';

/** Carries the client's address from the edge to the app; the only place the app learns it from. */
export const CLIENT_HEADER = 'x-yokemark-client';

/** An address as it is compared: IPv4 written inside IPv6 as IPv4, without a zone. */
function plainAddress(address: string): string {
  const withoutZone = address.replace(/%.*$/, '');
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(withoutZone)?.[1];
  return (mapped ?? withoutZone).toLowerCase();
}

/**
 * The address a request comes from. `X-Forwarded-For` grows to the right, one hop at a time, so only what trusted
 * proxies appended is believed: reading from the right, the first address that is not a trusted proxy is the client.
 */
export function clientAddress(peer: string, forwardedFor: string | undefined, trusted: TrustedProxies): string {
  let nearest = plainAddress(peer);
  const hops = (forwardedFor ?? '').split(',').map((hop) => plainAddress(hop.trim()));
  for (const hop of hops.reverse()) {
    if (!trusted.isTrusted(nearest) || isIP(hop) === 0) break;
    nearest = hop;
  }
  return nearest;
}

function tellsOfForwarding(name: string): boolean {
  return name.startsWith('x-forwarded-') || name === 'forwarded' || name === 'x-real-ip';
}

function isOurs(name: string): boolean {
  return name.startsWith('x-yokemark-') || name === 'x-nonce';
}

type TrustOptions = {
  trustedProxies: TrustedProxies;
  /** Origin customers reach the shop at. */
  publicUrl: string;
};

function joined(header: string | string[] | undefined): string | undefined {
  return Array.isArray(header) ? header.join(',') : header;
}

/**
 * Makes a request's headers trustworthy: drops what claims to come from a proxy unless a trusted proxy sent it, drops
 * every header of our own that came from outside, and names the client in `x-yokemark-client`.
 *
 * A form sent from a page at PUBLIC_URL is at home whatever name a proxy in between uses for this server, so for such a
 * request that name is the public one: the pages refuse a form whose origin is another host than its own.
 */
export function trustHeaders(request: IncomingMessage, { trustedProxies, publicUrl }: TrustOptions): void {
  const peer = request.socket.remoteAddress ?? '';
  const peerIsProxy = trustedProxies.isTrusted(plainAddress(peer));
  const set: Record<string, string> = {
    [CLIENT_HEADER]: clientAddress(peer, joined(request.headers['x-forwarded-for']), trustedProxies),
  };
  if (request.headers.origin === publicUrl) set['x-forwarded-host'] = new URL(publicUrl).host;
  const isDropped = (name: string) => name in set || isOurs(name) || (!peerIsProxy && tellsOfForwarding(name));

  for (const name of Object.keys(request.headers)) if (isDropped(name)) delete request.headers[name];
  Object.assign(request.headers, set);

  const raw = request.rawHeaders;
  const kept: string[] = [];
  for (let at = 0; at + 1 < raw.length; at += 2) {
    const [name = '', value = ''] = [raw[at], raw[at + 1]];
    if (!isDropped(name.toLowerCase())) kept.push(name, value);
  }
  request.rawHeaders = [...kept, ...Object.entries(set).flat()];
}
