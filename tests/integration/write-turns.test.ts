import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { afterCommit, reader, write } from '@/lib/server/db/database';
import { PrismaClient } from '@/lib/server/db/generated/sqlite/client';
import { newId } from '@/lib/server/db/new-id';
import { openDatabase } from '@/lib/server/db/open-database';
import { type FreshDatabase, freshDatabase } from './database';

const now = new Date('2026-09-01T10:00:00.000Z');

function customer(name: string) {
  return { id: newId(), name, createdAt: now };
}

async function customerNames(): Promise<string[]> {
  const rows = await reader().customer.findMany({ orderBy: { id: 'asc' } });
  return rows.map(({ name }) => name);
}

/** A promise to be settled from outside, to hold a transaction open without a clock. */
function gate() {
  let open: () => void = () => undefined;
  const passed = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { open, passed };
}

let fresh: FreshDatabase;
beforeAll(async () => {
  fresh = await freshDatabase();
});
afterAll(() => fresh.remove());

describe('writing', () => {
  it('keeps a write that was asked for while another one was open and then rolled back', async () => {
    const opened = gate();
    const failing = gate();
    const doomed = write(async (tx) => {
      await tx.customer.create({ data: customer('rolled back') });
      opened.open();
      await failing.passed;
      throw new Error('changed its mind');
    });
    await opened.passed;
    const kept = write((tx) => tx.customer.create({ data: customer('kept') }));
    failing.open();

    await expect(doomed).rejects.toThrow('changed its mind');
    await kept;
    expect(await customerNames()).toEqual(['kept']);
  });

  it('meets a trap that is there: on one shared connection the same write is acknowledged and lost', async () => {
    const shared = new PrismaClient({ adapter: new PrismaBetterSqlite3({ url: fresh.url }) });
    const opened = gate();
    const failing = gate();
    const doomed = shared.$transaction(async (tx) => {
      await tx.customer.create({ data: customer('rolled back') });
      opened.open();
      await failing.passed;
      throw new Error('changed its mind');
    });
    await opened.passed;
    const acknowledged = await shared.customer.create({ data: customer('lost') });
    failing.open();

    await expect(doomed).rejects.toThrow('changed its mind');
    expect(await shared.customer.findUnique({ where: { id: acknowledged.id } })).toBeNull();
    await shared.$disconnect();
  });

  it('shows nothing of a transaction that is still open', async () => {
    const before = await customerNames();
    const opened = gate();
    const ending = gate();
    const writing = write(async (tx) => {
      await tx.customer.create({ data: customer('not yet') });
      opened.open();
      await ending.passed;
    });
    await opened.passed;
    expect(await customerNames()).toEqual(before);
    ending.open();
    await writing;
    expect(await customerNames()).toEqual([...before, 'not yet']);
  });

  it('refuses a write inside a write instead of waiting for itself', async () => {
    const nested = write(() => write((tx) => tx.customer.count()));
    await expect(nested).rejects.toThrow('inside a write');
  });

  it('runs what waits for the commit after it, and drops it after a rollback', async () => {
    const steps: string[] = [];
    await write(async (tx) => {
      afterCommit(() => steps.push('told'));
      await tx.customer.create({ data: customer('told') });
      steps.push('written');
    });
    const failed = write(async () => {
      afterCommit(() => steps.push('never'));
      throw new Error('no');
    });
    await expect(failed).rejects.toThrow('no');
    expect(steps).toEqual(['written', 'told']);
  });

  it('lets the sign-in tables be written while a transaction is open, in turn', async () => {
    const database = openDatabase(fresh.url);
    const opened = gate();
    const ending = gate();
    const writing = database.write(async (tx) => {
      await tx.customer.create({ data: customer('first') });
      opened.open();
      await ending.passed;
    });
    await opened.passed;
    const row = { id: newId(), key: '192.0.2.1/sign-in', count: 1, lastRequest: 1 };
    const limit = Promise.resolve(database.authTables.rateLimit.create({ data: row }));
    // Time for a write that did not wait its turn to meet the open transaction.
    await new Promise((resolve) => setTimeout(resolve, 50));
    ending.open();
    await Promise.all([writing, limit]);
    expect(await database.reader.rateLimit.count()).toBe(1);
    await database.close();
  });

  it('loses none of the writes of two processes that read first and write then', async () => {
    const writes = 60;
    const script = join(import.meta.dirname, 'counting-writer.ts');
    const run = () => promisify(execFile)(process.execPath, ['--import', 'tsx', script, fresh.url, String(writes)]);
    await write((tx) => tx.customer.create({ data: { ...customer('0'), id: 'counter' } }));
    await Promise.all([run(), run()]);
    const counter = await reader().customer.findUniqueOrThrow({ where: { id: 'counter' } });
    expect(counter.name).toBe(String(2 * writes));
  });
});
