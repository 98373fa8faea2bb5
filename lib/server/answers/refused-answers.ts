import { randomBytes } from 'node:crypto';
import { LRUCache } from 'lru-cache';
import type { AnswerWord, Tick } from '@/lib/domain/revision/answer';
import type { LinkAccess } from '../links/link-access';
import type { AnswerResult } from './answers';

/** Why an answer was not taken; besides what the answer itself may be refused for: a yes sent together with a change. */
export type RefusedReason = Extract<AnswerResult, { ok: false }>['reason'] | 'yesWithChange';

/** An answer that was not taken, with everything that was typed into it. */
export type RefusedAnswer = {
  readonly reason: RefusedReason;
  readonly revisionId: string;
  readonly word: AnswerWord;
  readonly ticks: readonly Tick[];
  readonly typedName: string;
  readonly words: string;
};

/** Long enough to come back to the page after a call; common practice, no source. */
const KEPT_MS = 60 * 60_000;
const MOST_KEPT = 500;
const MOST_CHARACTERS = 4_000_000;

// In memory: it is needed from one request to the next, a form without scripts can be as long as it likes (a cookie could
// not hold it), and a customer's words that were never sent should not stay on the shop's disk. On the process, since a
// page and a route may each have their own copy of this module.
const slot = Symbol.for('yokemark.refused-answers');
const holder = globalThis as { [slot]?: LRUCache<string, RefusedAnswer> };

function kept(): LRUCache<string, RefusedAnswer> {
  holder[slot] ??= new LRUCache<string, RefusedAnswer>({
    max: MOST_KEPT,
    ttl: KEPT_MS,
    maxSize: MOST_CHARACTERS,
    sizeCalculation: ({ typedName, words }) => typedName.length + words.length + 1,
  });
  return holder[slot];
}

/** Keeps a refused answer for an hour, so that the page shows it again; its id means nothing to any other link. */
export function keepRefusedAnswer({ linkId }: Pick<LinkAccess, 'linkId'>, refused: RefusedAnswer): string {
  const id = randomBytes(12).toString('base64url');
  kept().set(`${linkId} ${id}`, refused);
  return id;
}

/** A refused answer by its id; null when it is another link's, or no longer kept. */
export function refusedAnswer({ linkId }: Pick<LinkAccess, 'linkId'>, id: string): RefusedAnswer | null {
  return kept().get(`${linkId} ${id}`) ?? null;
}
