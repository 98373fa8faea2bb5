import { BlockList, isIP } from 'node:net';

/** How far an address carries: this computer, the network it is on, or anywhere. */
export type Reach = 'thisComputer' | 'thisNetwork' | 'everywhere';

function networks(v4: readonly [string, number][], v6: readonly [string, number][]): BlockList {
  const list = new BlockList();
  for (const [net, bits] of v4) list.addSubnet(net, bits, 'ipv4');
  for (const [net, bits] of v6) list.addSubnet(net, bits, 'ipv6');
  return list;
}

const onThisComputer = networks(
  [
    ['127.0.0.0', 8], // RFC 1122, section 3.2.1.3: loopback
    ['0.0.0.0', 8], // RFC 1122, section 3.2.1.3: this host
  ],
  [
    ['::1', 128], // RFC 4291, section 2.5.3: loopback
    ['::', 128], // RFC 4291, section 2.5.2: unspecified
  ],
);

const onThisNetwork = networks(
  [
    ['10.0.0.0', 8], // RFC 1918
    ['172.16.0.0', 12], // RFC 1918
    ['192.168.0.0', 16], // RFC 1918
    ['169.254.0.0', 16], // RFC 3927: link-local
    ['100.64.0.0', 10], // RFC 6598: behind a provider's shared address
  ],
  [
    ['fe80::', 10], // RFC 4291, section 2.5.6: link-local
    ['fc00::', 7], // RFC 4193: unique local
  ],
);

/** Names that no server outside answers for, by their last label. */
const localNames: readonly [RegExp, Reach][] = [
  [/(^|\.)localhost$/, 'thisComputer'], // RFC 6761, section 6.3
  [/\.local$/, 'thisNetwork'], // RFC 6762
  [/(^|\.)home\.arpa$/, 'thisNetwork'], // RFC 8375
  [/\.(test|invalid)$/, 'thisNetwork'], // RFC 6761, sections 6.2 and 6.4
  [/\.internal$/, 'thisNetwork'], // ICANN board resolution 2024.07.29.06
  [/\.(lan|home)$/, 'thisNetwork'], // common practice of home routers, no source
  [/^[^.]+$/, 'thisNetwork'], // a bare name is looked for on the network only; common practice, no source
];

/** How far links that start with `publicUrl` carry: whether a customer somewhere else can open them. */
export function reach(publicUrl: string): Reach {
  const host = new URL(publicUrl).hostname
    .replace(/^\[|\]$/g, '')
    .replace(/\.$/, '')
    .toLowerCase();
  const version = isIP(host);
  if (version !== 0) {
    const family = version === 4 ? 'ipv4' : 'ipv6';
    if (onThisComputer.check(host, family)) return 'thisComputer';
    return onThisNetwork.check(host, family) ? 'thisNetwork' : 'everywhere';
  }
  return localNames.find(([pattern]) => pattern.test(host))?.[1] ?? 'everywhere';
}
