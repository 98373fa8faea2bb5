import { reader, write } from '../db/database';
import type { MailLoaders } from './mail-data';
import type { MailMessage } from './mail-message';
import { renderMail } from './render-mail';
import { type Sending, sendMail } from './send-mail';

const minute = 60_000;

/** How long a message belongs to who took it, in ms; longer than sending can take. Afterwards somebody else may. */
const claimMs = 10 * minute;

/**
 * Waits between tries, in minutes, then it is given up: about two and a half days. RFC 5321, section 4.5.4.1 asks for 30
 * minutes between tries and days before giving up; the first ones are closer, since a customer waits for the link.
 */
export const retryMinutes: readonly number[] = [1, 5, 15, 30, 60, 120, 240, 480, 960, 1440];

interface Claimed {
  readonly id: string;
  readonly template: string;
  readonly idsJson: string;
  readonly messageId: string;
  readonly createdAt: Date;
  readonly attempts: number;
  readonly claimedUntil: Date;
}

/** What came of a round: how many messages left, were put off, given up, or no longer needed. */
export type Delivered = Readonly<Record<'sent' | 'putOff' | 'gaveUp' | 'notNeeded', number>>;

function dueAt(now: Date) {
  return {
    state: 'waiting',
    dueAt: { lte: now },
    OR: [{ claimedUntil: null }, { claimedUntil: { lte: now } }],
  };
}

/** Takes the next message that is due, so that no other process sends it meanwhile; null when none is. */
async function claimNext(now: Date): Promise<Claimed | null> {
  const waiting = await reader().outbox.findFirst({ where: dueAt(now), select: { id: true } });
  if (!waiting) return null;
  const claimedUntil = new Date(now.getTime() + claimMs);
  return write(async (tx) => {
    const next = await tx.outbox.findFirst({ where: dueAt(now), orderBy: [{ dueAt: 'asc' }, { id: 'asc' }] });
    if (!next) return null;
    const taken = await tx.outbox.updateMany({
      where: { id: next.id, ...dueAt(now) },
      data: { claimedUntil, attempts: { increment: 1 } },
    });
    return taken.count === 0 ? null : { ...next, attempts: next.attempts + 1, claimedUntil };
  });
}

async function attempt(loaders: MailLoaders, claimed: Claimed): Promise<Sending | 'notNeeded'> {
  let message: MailMessage | null;
  try {
    message = await renderMail(loaders, claimed);
  } catch (error) {
    console.error(`The message ${claimed.messageId} could not be written out.`, error);
    return { ok: false, final: false, error: 'unwritten' };
  }
  return message === null ? 'notNeeded' : sendMail(message);
}

function outcomeOf(sending: Sending | 'notNeeded', attempts: number, now: Date) {
  if (sending === 'notNeeded') return { state: 'notNeeded', lastError: null } as const;
  if (sending.ok) return { state: 'sent', lastError: null, sentBy: sending.sentBy, sentAt: now } as const;
  const wait = retryMinutes[attempts - 1];
  if (sending.final || wait === undefined) return { state: 'gaveUp', lastError: sending.error } as const;
  return { state: 'waiting', lastError: sending.error, dueAt: new Date(now.getTime() + wait * minute) } as const;
}

/**
 * Sends every message that is due at `now`. A message is taken, sent outside any transaction, and then marked; should the
 * process end in between, it is sent again later under the same Message-ID.
 */
export async function deliverDue(loaders: MailLoaders, now: Date): Promise<Delivered> {
  const delivered = { sent: 0, putOff: 0, gaveUp: 0, notNeeded: 0 };
  for (let claimed = await claimNext(now); claimed !== null; claimed = await claimNext(now)) {
    const { id, attempts, claimedUntil } = claimed;
    const outcome = outcomeOf(await attempt(loaders, claimed), attempts, now);
    await write((tx) =>
      tx.outbox.updateMany({ where: { id, claimedUntil }, data: { ...outcome, claimedUntil: null } }),
    );
    delivered[outcome.state === 'waiting' ? 'putOff' : outcome.state] += 1;
  }
  return delivered;
}
