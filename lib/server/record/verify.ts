import { reader } from '../db/database';
import { entryHash, payloadHash } from './entry-hash';

/** What checking a job's record found. `erased` counts the entries whose words were erased, and say so. */
export type Verification =
  | { ok: true; entries: number; erased: number }
  | { ok: false; seq: number; reason: RecordFault };

/**
 * `entryMissing`: a number is skipped, or the job counts more entries than there are. `chainBroken`: an entry is not what
 * was hashed, or does not follow the one before. `headDiffers`: the job names another last entry. `payloadChanged` and
 * `payloadMissing`: the words of an entry are not those that were hashed, or are gone and were not erased.
 */
export type RecordFault = 'entryMissing' | 'chainBroken' | 'headDiffers' | 'payloadChanged' | 'payloadMissing';

/** Checks the whole record of a job, entry by entry. A chain shows that nothing changed, not who wrote it. */
export async function verifyRecord(jobId: string): Promise<Verification> {
  const job = await reader().job.findUniqueOrThrow({
    where: { id: jobId },
    include: { record: { orderBy: { seq: 'asc' }, include: { payload: true } }, erasures: true },
  });
  const erasures = new Set(
    job.erasures.filter(({ erasedTable }) => erasedTable === 'RecordPayload').map(({ erasedRowId }) => erasedRowId),
  );
  let previousHash = '';
  let erased = 0;
  for (const [index, entry] of job.record.entries()) {
    const seq = index + 1;
    if (entry.seq !== seq) return { ok: false, seq, reason: 'entryMissing' };
    if (entry.previousHash !== previousHash || entryHash(entry) !== entry.hash) {
      return { ok: false, seq, reason: 'chainBroken' };
    }
    if (entry.payload === null && !erasures.has(entry.id)) return { ok: false, seq, reason: 'payloadMissing' };
    if (entry.payload === null) erased += 1;
    else if (payloadHash(entry.payload.salt, entry.payload.bytes) !== entry.payloadHash) {
      return { ok: false, seq, reason: 'payloadChanged' };
    }
    previousHash = entry.hash;
  }
  const entries = job.record.length;
  if (entries !== job.recordSeq) return { ok: false, seq: entries + 1, reason: 'entryMissing' };
  if (previousHash !== job.recordHead) return { ok: false, seq: entries, reason: 'headDiffers' };
  return { ok: true, entries, erased };
}
