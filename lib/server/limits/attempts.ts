import { isIPv6 } from 'node:net';
import { LRUCache } from 'lru-cache';

/** What is tried at the shop's door by strangers. */
export type AttemptKind = 'wrongLink' | 'setUpCode' | 'signInAccount' | 'phonePicture' | 'customerPicture';

/** How many tries one client has in a window that starts with its first; common practice, no source. */
const limits: Readonly<Record<AttemptKind, { tries: number; windowMs: number }>> = {
  wrongLink: { tries: 20, windowMs: 10 * 60_000 },
  setUpCode: { tries: 5, windowMs: 15 * 60_000 },
  // Counted by the code on the screen, which is good for that long.
  phonePicture: { tries: 60, windowMs: 30 * 60_000 },
  // Counted by the link, whatever comes of each; how many are kept for a job is counted in its record.
  customerPicture: { tries: 40, windowMs: 60 * 60_000 },
  // NIST SP 800-63B, section 5.2.2: no more than 100 failed tries in a row on one account.
  signInAccount: { tries: 100, windowMs: 24 * 3_600_000 },
};

interface Tally {
  startedAt: number;
  tries: number;
}

/** How many clients are remembered; the ones seen longest ago are forgotten first. */
const remembered = 20_000;

// In memory, not in the database: a stranger who guesses must not be able to keep the disk busy, and what is guessed at has
// 60 bits or more. On the process, since the page bundle and the server around it each load this module.
const slot = Symbol.for('yokemark.attempts');
const holder = globalThis as { [slot]?: LRUCache<string, Tally> };

function tallies(): LRUCache<string, Tally> {
  holder[slot] ??= new LRUCache<string, Tally>({ max: remembered });
  return holder[slot];
}

/** One client: an address, or for IPv6 the /64 it is in, since a client has all of that (RFC 6177, section 1). */
function clientOf(address: string): string {
  if (!isIPv6(address)) return address;
  const [left = '', right] = address.toLowerCase().split('::');
  const head = left === '' ? [] : left.split(':');
  const missing = right === undefined ? 0 : 8 - head.length - (right === '' ? 0 : right.split(':').length);
  const groups = [...head, ...Array.from({ length: missing }, () => '0'), ...(right ? right.split(':') : [])];
  return groups
    .slice(0, 4)
    .map((group) => group.replace(/^0+(?=.)/, ''))
    .join(':');
}

function tallyOf(kind: AttemptKind, client: string, now: Date): { key: string; tally: Tally } {
  const key = `${kind} ${clientOf(client)}`;
  const kept = tallies().get(key);
  const isOver = kept === undefined || now.getTime() - kept.startedAt >= limits[kind].windowMs;
  return { key, tally: isOver ? { startedAt: now.getTime(), tries: 0 } : kept };
}

/** Seconds until `client` may try again; 0 when it may now. Counts nothing. */
export function secondsUntilAllowed(kind: AttemptKind, client: string, now: Date): number {
  const { tally } = tallyOf(kind, client, now);
  const { tries, windowMs } = limits[kind];
  return tally.tries < tries ? 0 : Math.ceil((tally.startedAt + windowMs - now.getTime()) / 1000);
}

/**
 * Counts one try and says whether it was still allowed. For wrong links, count after the link has proved wrong: a good link
 * is served to a client however often others at its address were wrong.
 */
export function allowAttempt(kind: AttemptKind, client: string, now: Date): boolean {
  const { key, tally } = tallyOf(kind, client, now);
  if (tally.tries >= limits[kind].tries) return false;
  tallies().set(key, { ...tally, tries: tally.tries + 1 });
  return true;
}

/** Forgets a client's tries, after one that was right. */
export function forgetAttempts(kind: AttemptKind, client: string): void {
  tallies().delete(`${kind} ${clientOf(client)}`);
}
