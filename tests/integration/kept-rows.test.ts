import Sqlite from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reader, write } from '@/lib/server/db/database';
import { sqlitePath } from '@/lib/server/db/database-url';
import { keptTables } from '@/lib/server/db/kept-tables';
import { assertDatabase, migrateDatabase } from '@/lib/server/db/migrate';
import { newId } from '@/lib/server/db/new-id';
import { isKeptRowRefusal, isUniqueClash } from '@/lib/server/db/refusals';
import { addContact, addJob, type FreshDatabase, freshDatabase } from './database';
import { addKeptRows } from './kept-row-fixtures';

const now = new Date('2026-09-01T10:00:00.000Z');
let fresh: FreshDatabase;
let ids: Record<string, string>;

beforeAll(async () => {
  fresh = await freshDatabase();
  ids = await write(async (tx) => {
    const jobId = await addJob(tx, now);
    return addKeptRows(tx, jobId, await addContact(tx, jobId, now), now);
  });
});
afterAll(() => fresh.remove());

async function refusal(sql: string): Promise<unknown> {
  try {
    await write((tx) => tx.$executeRawUnsafe(sql));
  } catch (error) {
    return error;
  }
  throw new Error(`Was not refused: ${sql}`);
}

async function rowsOf(table: string): Promise<unknown> {
  return write((tx) => tx.$queryRawUnsafe(`SELECT * FROM "${table}"`));
}

describe.each(keptTables)('a row of $table', ({ table, key }) => {
  it.each([
    ['changed', `UPDATE "${table}" SET "${key}" = "${key}"`],
    ['removed', `DELETE FROM "${table}"`],
    ['replaced', `INSERT OR REPLACE INTO "${table}" SELECT * FROM "${table}"`],
    ['quietly skipped over', `INSERT OR IGNORE INTO "${table}" SELECT * FROM "${table}"`],
  ])('cannot be %s', async (_how, sql) => {
    const before = await rowsOf(table);
    expect(before).toHaveLength(1);
    expect(isKeptRowRefusal(await refusal(sql))).toBe(true);
    expect(await rowsOf(table)).toEqual(before);
  });

  it('can be added', () => {
    expect(ids[table]).toBeTypeOf('string');
  });
});

describe('kept tables', () => {
  it('refuse a replacement that clashes with another unique value than the key', async () => {
    const columns = await reader().$queryRaw<{ name: string }[]>`SELECT name FROM pragma_table_info('Revision')`;
    const other = columns.map(({ name }) => (name === 'id' || name === 'seal' ? `'other'` : `"${name}"`));
    const sql = `INSERT OR REPLACE INTO "Revision" SELECT ${other.join(', ')} FROM "Revision"`;
    expect(isKeptRowRefusal(await refusal(sql))).toBe(true);
    expect(await reader().revision.count()).toBe(1);
  });

  it('refuse a second answer with the same idempotency key as a clash, not as a change', async () => {
    const { id, ...answer } = await reader().answer.findFirstOrThrow();
    const again = write((tx) => tx.answer.create({ data: { ...answer, id: newId() } }));
    await expect(again).rejects.toSatisfy((error) => isUniqueClash(error) && !isKeptRowRefusal(error));
    expect(id).toBe(ids.Answer);
  });

  it('let what stands beside them be erased', async () => {
    const erased = await write((tx) => tx.answerIdentity.deleteMany({ where: { answerId: ids.Answer ?? '' } }));
    expect(erased.count).toBe(1);
    expect(await reader().answer.count()).toBe(1);
  });

  it('are refused at start-up when a trigger is gone or weakened, and mended by migrating', async () => {
    await assertDatabase(fresh.url);
    const outside = new Sqlite(sqlitePath(fresh.url));
    outside.exec('DROP TRIGGER "Answer_kept_delete"');
    outside.exec('DROP TRIGGER "Revision_kept_update"');
    outside.exec('CREATE TRIGGER "Revision_kept_update" BEFORE UPDATE ON "Revision" WHEN 1 = 0 BEGIN SELECT 1; END');
    outside.exec('CREATE TRIGGER "stray" AFTER UPDATE ON "Job" BEGIN SELECT 1; END');
    outside.close();

    await expect(assertDatabase(fresh.url)).rejects.toThrow(
      'Answer_kept_delete is missing; Revision_kept_update is not what it should be; stray is not known',
    );
    expect(await migrateDatabase(fresh.url)).toEqual({ applied: [] });
    await assertDatabase(fresh.url);
  });
});
