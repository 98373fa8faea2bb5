import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { simpleParser } from 'mailparser';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reader, write } from '@/lib/server/db/database';
import { deliverDue } from '@/lib/server/mail/deliver';
import { addJob, type FreshDatabase, freshDatabase } from './database';
import { makeLetters } from './mail-fixtures';

const now = new Date('2026-09-01T10:00:00.000Z');
const letters = makeLetters();
let fresh: FreshDatabase;
let jobId: string;

beforeAll(async () => {
  fresh = await freshDatabase();
  jobId = await write((tx) => addJob(tx, now));
});
afterAll(() => fresh.remove());

describe('without a mail server', () => {
  it('a message becomes a file for the owner’s eyes, named by time and id, that a mail program can open', async () => {
    const id = await letters.revisionSent(jobId, now);
    expect(await deliverDue(letters.loaders, now)).toMatchObject({ sent: 1 });
    expect(await reader().outbox.findUnique({ where: { id } })).toMatchObject({ state: 'sent', sentBy: 'file' });

    const folder = join(fresh.folder, 'mail');
    expect(readdirSync(folder)).toEqual([`2026-09-01T10-00-00Z ${id}.eml`]);
    const path = join(folder, `2026-09-01T10-00-00Z ${id}.eml`);
    expect([statSync(folder).mode & 0o777, statSync(path).mode & 0o777]).toEqual([0o700, 0o600]);
    const raw = readFileSync(path);
    expect(raw.toString('latin1').replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const parsed = await simpleParser(raw);
    expect(parsed.to).toMatchObject({ value: [{ address: 'wren@example.org' }] });
    expect(parsed.messageId).toBe(`<${id}@localhost>`);
    expect(parsed.text).toContain('https://proofs.example.org/proof/TheTokenOfWren');
  });

  it('says so and tries again when the file cannot be written', async () => {
    const folder = join(fresh.folder, 'mail');
    rmSync(folder, { recursive: true });
    writeFileSync(folder, 'in the way');
    const id = await letters.revisionSent(jobId, now);
    expect(await deliverDue(letters.loaders, now)).toMatchObject({ putOff: 1 });
    expect((await reader().outbox.findUniqueOrThrow({ where: { id } })).lastError).toMatch(/EEXIST|ENOTDIR/);
    rmSync(folder);
    const later = new Date(now.getTime() + 60_000);
    expect(await deliverDue(letters.loaders, later)).toMatchObject({ sent: 1 });
    expect(readdirSync(folder)).toHaveLength(1);
  });
});
