import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flatRead, reader, write } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import { openDatabase, type Transaction } from '@/lib/server/db/open-database';
import { addContact, addJob, type FreshDatabase, freshDatabase } from './database';

let fresh: FreshDatabase;
beforeAll(async () => {
  fresh = await freshDatabase();
});
afterAll(() => fresh.remove());

// What each number means: sqlite.org/pragma.html.
async function settingsOf(connection: Pick<Transaction, '$queryRaw'>) {
  const [row] = await connection.$queryRaw<object[]>`
    SELECT * FROM pragma_journal_mode, pragma_synchronous, pragma_foreign_keys, pragma_recursive_triggers,
      pragma_query_only, pragma_busy_timeout`;
  return Object.fromEntries(Object.entries(row ?? {}).map(([name, value]) => [name, String(value)]));
}

describe('a SQLite connection', () => {
  const full = '2';
  const writing = {
    journal_mode: 'wal',
    synchronous: full,
    foreign_keys: '1',
    recursive_triggers: '1',
    timeout: '15000',
  };

  it('writes ahead, flushes at each commit, holds foreign keys and fires triggers on replacing', async () => {
    expect(await write(settingsOf)).toEqual({ ...writing, query_only: '0' });
  });

  it('keeps to that when the file is opened again', async () => {
    const again = openDatabase(fresh.url);
    expect(await again.write(settingsOf)).toEqual({ ...writing, query_only: '0' });
    await again.close();
  });

  it('only reads, for readers', async () => {
    expect(await settingsOf(reader())).toEqual({ ...writing, query_only: '1' });
    const smuggled = reader().customer as unknown as Transaction['customer'];
    const created = smuggled.create({ data: { id: newId(), name: 'Nobody', createdAt: new Date(0) } });
    await expect(created).rejects.toThrow('readonly');
  });
});

describe('a flat read', () => {
  it('sees what was just committed, and nothing of what is under way', async () => {
    const [id, now] = [newId(), new Date()];
    const named = () => flatRead<{ name: string }>`SELECT "name" FROM "Customer" WHERE "id" = ${id}`;
    await write(async (tx) => {
      await tx.customer.create({ data: { id, name: 'Saltmarsh', createdAt: now } });
      expect(await named()).toEqual([]);
    });
    expect(await named()).toEqual([{ name: 'Saltmarsh' }]);
  });

  it('takes its values as values, never as part of the statement', async () => {
    const sly = `' OR 1 = 1 --`;
    expect(await flatRead`SELECT "id" FROM "Customer" WHERE "name" = ${sly}`).toEqual([]);
  });

  it('only reads', async () => {
    await expect(flatRead`DELETE FROM "Customer" WHERE "id" = ${'none'} RETURNING "id"`).rejects.toThrow('readonly');
  });
});

describe('what is stored', () => {
  it('has one form of instant everywhere: UTC text with milliseconds', async () => {
    const now = new Date('2026-09-01T10:00:00Z');
    await write(async (tx) => addContact(tx, await addJob(tx, now), now));
    const columns = await reader().$queryRaw<{ table: string; column: string }[]>`
      SELECT m.name AS "table", c.name AS "column" FROM sqlite_master m JOIN pragma_table_info(m.name) c
      WHERE m.type = 'table' AND c.type = 'DATETIME' AND m.name IN ('Customer', 'Job', 'Contact')`;
    expect(columns.length).toBeGreaterThan(5);
    const text = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}\+00:00$/;
    const rows = await reader().$queryRaw<Record<string, string | null>[]>`
      SELECT "neededAt" || '' AS a, "createdAt" || '' AS b, "updatedAt" || '' AS c FROM "Job"`;
    for (const value of rows.flatMap((row) => Object.values(row))) expect(value).toMatch(text);
  });

  it('has no instant that the database writes by itself', async () => {
    const defaults = await reader().$queryRaw<object[]>`
      SELECT m.name, c.name FROM sqlite_master m JOIN pragma_table_info(m.name) c
      WHERE m.type = 'table' AND m.name NOT LIKE '\\_%' ESCAPE '\\' AND c.dflt_value IS NOT NULL`;
    expect(defaults).toEqual([]);
  });

  it('has ids of UUID version 7, which sort by the time they were made', () => {
    const ids = Array.from({ length: 200 }, newId);
    // RFC 9562, sections 4.1, 4.2 and 5.7: version and variant digits.
    for (const id of ids) expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect([...ids].sort()).toEqual(ids);
  });
});
