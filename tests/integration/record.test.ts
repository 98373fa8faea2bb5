import { createHash } from 'node:crypto';
import Sqlite from 'better-sqlite3';
import canonicalize from 'canonicalize';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { reader, write } from '@/lib/server/db/database';
import { sqlitePath } from '@/lib/server/db/database-url';
import { newId } from '@/lib/server/db/new-id';
import { appendRecord } from '@/lib/server/record/append';
import { verifyRecord } from '@/lib/server/record/verify';
import { addJob, type FreshDatabase, freshDatabase } from './database';

const now = new Date('2026-09-01T10:00:00.123Z');
let fresh: FreshDatabase | undefined;
let jobId: string;

beforeEach(async () => {
  fresh ??= await freshDatabase();
  jobId = await write(async (tx) => {
    const id = await addJob(tx, now);
    await appendRecord(tx, id, 'jobMade', { title: 'Autumn relay shirts' }, now);
    await appendRecord(tx, id, 'answered', { name: 'Łukasz Nguyễn', ticks: ['spelling', 'sizes'] }, now);
    await appendRecord(tx, id, 'reopened', { reason: 'one more shirt' }, now);
    return id;
  });
});
afterAll(() => fresh?.remove());

/** Changes rows the way somebody with the file in hand would: with the triggers taken out. */
function tamper(sql: string): void {
  const file = new Sqlite(sqlitePath(fresh?.url ?? ''));
  file.pragma('foreign_keys = OFF');
  const triggers = file.prepare(`SELECT name, sql FROM sqlite_master WHERE type = 'trigger'`).all() as {
    name: string;
    sql: string;
  }[];
  for (const { name } of triggers) file.exec(`DROP TRIGGER "${name}"`);
  file.exec(sql.replaceAll(':job', `'${jobId}'`));
  for (const trigger of triggers) file.exec(trigger.sql);
  file.close();
}

describe('the record of a job', () => {
  it('chains each entry to the one before, over canonical JSON (RFC 8785) and SHA-256 (FIPS 180-4)', async () => {
    const sha256 = (text: string | Uint8Array) => createHash('sha256').update(text).digest('hex');
    const entries = await reader().recordEntry.findMany({ where: { jobId }, orderBy: { seq: 'asc' } });
    let previousHash = '';
    for (const { seq, kind, payloadHash, hash } of entries) {
      const at = '2026-09-01T10:00:00.123Z';
      const text = canonicalize({ at, job: jobId, kind, payloadHash, previousHash, seq }) ?? '';
      expect(hash).toBe(sha256(text));
      previousHash = hash;
    }
    expect(entries.map(({ seq }) => seq)).toEqual([1, 2, 3]);
    const job = await reader().job.findUniqueOrThrow({ where: { id: jobId } });
    expect([job.recordSeq, job.recordHead]).toEqual([3, previousHash]);
    expect(await verifyRecord(jobId)).toEqual({ ok: true, entries: 3, erased: 0 });
  });

  it('keeps what an entry says as canonical bytes, salted so that equal words hash apart', async () => {
    const again = await write((tx) => appendRecord(tx, jobId, 'reopened', { reason: 'one more shirt' }, now));
    const entries = await reader().recordEntry.findMany({
      where: { jobId, kind: 'reopened' },
      include: { payload: true },
    });
    expect(entries.map(({ payload }) => Buffer.from(payload?.bytes ?? []).toString())).toEqual([
      '{"reason":"one more shirt"}',
      '{"reason":"one more shirt"}',
    ]);
    expect(new Set(entries.map(({ payloadHash }) => payloadHash)).size).toBe(2);
    expect(again.seq).toBe(4);
  });

  it('numbers entries without a gap when many are added at once and some are rolled back', async () => {
    const added = Array.from({ length: 12 }, (_, index) =>
      write(async (tx) => {
        await appendRecord(tx, jobId, 'many', { index }, now);
        if (index % 3 === 0) throw new Error('changed its mind');
      }),
    );
    const results = await Promise.allSettled(added);
    expect(results.filter(({ status }) => status === 'rejected')).toHaveLength(4);
    expect(await verifyRecord(jobId)).toEqual({ ok: true, entries: 11, erased: 0 });
  });

  it('still verifies after the words of an entry were erased, and says how many', async () => {
    await write(async (tx) => {
      const entry = await tx.recordEntry.findFirstOrThrow({ where: { jobId, seq: 2 } });
      await tx.recordPayload.delete({ where: { entryId: entry.id } });
      const erasure = { id: newId(), jobId, erasedTable: 'RecordPayload', erasedRowId: entry.id, at: now };
      await tx.erasure.create({ data: erasure });
    });
    expect(await verifyRecord(jobId)).toEqual({ ok: true, entries: 3, erased: 1 });
  });

  it.each([
    ['a changed kind', `UPDATE "RecordEntry" SET kind = 'yes' WHERE "jobId" = :job AND seq = 2`, 2, 'chainBroken'],
    [
      'a changed time',
      `UPDATE "RecordEntry" SET at = '2026-09-01T10:00:00.124+00:00' WHERE "jobId" = :job AND seq = 1`,
      1,
      'chainBroken',
    ],
    ['an entry taken out', `DELETE FROM "RecordEntry" WHERE "jobId" = :job AND seq = 2`, 2, 'entryMissing'],
    ['the last entry taken off', `DELETE FROM "RecordEntry" WHERE "jobId" = :job AND seq = 3`, 3, 'entryMissing'],
    [
      'the last entry taken off and the count with it',
      `DELETE FROM "RecordEntry" WHERE "jobId" = :job AND seq = 3; UPDATE "Job" SET "recordSeq" = 2 WHERE id = :job`,
      2,
      'headDiffers',
    ],
    [
      'changed words',
      `UPDATE "RecordPayload" SET bytes = x'7b7d' WHERE "entryId" IN (SELECT id FROM "RecordEntry" WHERE "jobId" = :job AND seq = 3)`,
      3,
      'payloadChanged',
    ],
    [
      'words taken away and not erased',
      `DELETE FROM "RecordPayload" WHERE "entryId" IN (SELECT id FROM "RecordEntry" WHERE "jobId" = :job AND seq = 1)`,
      1,
      'payloadMissing',
    ],
  ])('shows %s', async (_what, sql, seq, reason) => {
    tamper(sql);
    expect(await verifyRecord(jobId)).toEqual({ ok: false, seq, reason });
  });
});
