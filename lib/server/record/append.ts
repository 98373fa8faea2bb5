import { randomBytes } from 'node:crypto';
import { canonicalBytes, type JsonValue } from '@/lib/domain/revision/canonical';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import { entryHash, payloadHash } from './entry-hash';

/**
 * Adds one entry to the append-only record of a job, chained to the one before it. `payload` says what happened; it may
 * hold personal words, since it lies in a table of its own and can be erased while the chain still verifies. The number
 * is taken by writing the job's row first, so two at once get two numbers, one after the other.
 */
export async function appendRecord(
  tx: Transaction,
  jobId: string,
  kind: string,
  payload: JsonValue,
  now: Date,
): Promise<{ seq: number; hash: string }> {
  const { recordSeq: seq, recordHead: previousHash } = await tx.job.update({
    where: { id: jobId },
    data: { recordSeq: { increment: 1 } },
    select: { recordSeq: true, recordHead: true },
  });
  const id = newId();
  const salt = randomBytes(32);
  const bytes = canonicalBytes(payload);
  const entry = { jobId, seq, kind, payloadHash: payloadHash(salt, bytes), previousHash, at: now };
  const hash = entryHash(entry);
  await tx.recordEntry.create({ data: { id, hash, ...entry } });
  await tx.recordPayload.create({ data: { entryId: id, salt, bytes: Uint8Array.from(bytes) } });
  await tx.job.update({ where: { id: jobId }, data: { recordHead: hash } });
  return { seq, hash };
}
