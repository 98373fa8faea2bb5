import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { signIn } from '@/lib/server/auth/sign-in';
import { database, reader, write } from '@/lib/server/db/database';
import { keptTables } from '@/lib/server/db/kept-tables';
import { assertDatabase, migrateDatabase } from '@/lib/server/db/migrate';
import { readMigrations, readSchema } from '@/lib/server/db/migration-files';
import { newId } from '@/lib/server/db/new-id';
import type { Transaction } from '@/lib/server/db/open-database';
import { isKeptRowRefusal, isUniqueClash } from '@/lib/server/db/refusals';
import { inMemory, noOutsideTables, withSchemaEngine } from '@/lib/server/db/schema-engine';
import { linkToken } from '@/lib/server/links/link-token';
import { issueLink, openLink, revokeLink } from '@/lib/server/links/links';
import { deliverDue } from '@/lib/server/mail/deliver';
import { appendRecord } from '@/lib/server/record/append';
import { verifyRecord } from '@/lib/server/record/verify';
import { makeSetUpCode } from '@/lib/server/secrets/set-up-code';
import { openShop } from '@/lib/server/shop/open-shop';
import { addContact, addJob, type FreshDatabase, freshDatabase } from './database';
import { addKeptRows } from './kept-row-fixtures';
import { makeLetters } from './mail-fixtures';
import { type PostgresqlServer, postgresqlPrograms, startPostgresql } from './postgresql-server';

const now = new Date('2026-09-01T10:00:00.123Z');
const later = new Date('2027-03-01T10:00:00.000Z');
const programs = postgresqlPrograms();
if (!programs) console.log('skipped: PostgreSQL is not installed here (apt-get install postgresql)');

/** The SQL that makes the schema from nothing, as Prisma's engine writes it. */
async function sqlOfSchema(): Promise<string> {
  const { stdout } = await withSchemaEngine('sqlite', inMemory, 0, (engine) =>
    engine.diff({
      from: { tag: 'empty' },
      to: { tag: 'schemaDatamodel', files: [{ path: 'schema.prisma', content: readSchema('postgresql') }] },
      script: true,
      exitCode: null,
      filters: noOutsideTables,
    }),
  );
  return stdout ?? '';
}

/** Every column, constraint and index of a schema, one line each; made with `sql` first where that is given. */
async function shapeOf(url: string, schema: string, sql = ''): Promise<string[]> {
  const client = new Client({ connectionString: url });
  await client.connect();
  if (sql) await client.query(`CREATE SCHEMA ${schema}; SET search_path TO ${schema}; ${sql}`);
  const { rows } = await client.query<{ line: string }>(
    `SELECT concat_ws(' ', table_name, column_name, data_type, datetime_precision, is_nullable, column_default) AS line
       FROM information_schema.columns WHERE table_schema = $1
     UNION ALL SELECT conrelid::regclass || ' ' || conname || ' ' || pg_get_constraintdef(oid)
       FROM pg_constraint WHERE connamespace = $1::regnamespace
     UNION ALL SELECT indexdef FROM pg_indexes WHERE schemaname = $1
     ORDER BY line`,
    [schema],
  );
  await client.end();
  const lines = rows.map(({ line }) => line.replaceAll(`${schema}.`, ''));
  return lines.filter((line) => !line.includes('_prisma_migrations')).sort();
}

describe.skipIf(programs === null)('the same on PostgreSQL', () => {
  let server: PostgresqlServer;
  let fresh: FreshDatabase;
  let jobId: string;
  let contactId: string;

  beforeAll(async () => {
    server = await startPostgresql(programs ?? '');
    fresh = await freshDatabase({ DATABASE_URL: server.url, PUBLIC_URL: 'https://proofs.example.org' });
    await write(async (tx) => {
      jobId = await addJob(tx, now);
      contactId = await addContact(tx, jobId, now);
      await addKeptRows(tx, await addJob(tx, now), contactId, now);
    });
  });
  afterAll(async () => {
    await fresh?.remove();
    await server?.stop();
  });

  it('migrations apply once, lead to the schema, and set the triggers', async () => {
    expect(database().provider).toBe('postgresql');
    expect(await migrateDatabase(fresh.url)).toEqual({ applied: [] });
    await assertDatabase(fresh.url);
    const applied = await reader().$queryRaw<{ name: string }[]>`
      SELECT migration_name AS name FROM "_prisma_migrations" WHERE finished_at IS NOT NULL ORDER BY 1`;
    expect(applied.map(({ name }) => name)).toEqual(readMigrations('postgresql').map(({ name }) => name));

    const made = await shapeOf(fresh.url, 'public');
    expect(made.length).toBeGreaterThan(200);
    expect(made).toEqual(await shapeOf(fresh.url, 'from_schema', await sqlOfSchema()));
  });

  it('a migration that fails leaves nothing of itself, and may hold a semicolon inside a text', async () => {
    const other = new URL(server.url);
    other.pathname = '/half_way';
    const admin = new Client({ connectionString: server.url });
    await admin.connect();
    await admin.query('CREATE DATABASE half_way');
    await admin.end();
    const apply = (sql: string) =>
      withSchemaEngine('postgresql', other.href, 0, (engine) =>
        engine.applyMigrations({
          migrationsList: {
            baseDir: fresh.folder,
            lockfile: { path: 'migration_lock.toml', content: 'provider = "postgresql"' },
            shadowDbInitScript: '',
            migrationDirectories: [
              { path: '1_half_way', migrationFile: { path: 'migration.sql', content: { tag: 'ok', value: sql } } },
            ],
          },
          filters: noOutsideTables,
        }),
      );
    await expect(apply(`CREATE TABLE first (x text DEFAULT ';'); CREATE TABLE first (x text);`)).rejects.toThrow(
      'relation "first" already exists',
    );
    const look = new Client({ connectionString: other.href });
    await look.connect();
    const { rows } = await look.query(`SELECT tablename FROM pg_tables WHERE tablename = 'first'`);
    await look.end();
    expect(rows).toEqual([]);
  });

  it.each(keptTables)(
    'a row of $table cannot be changed, removed, replaced or emptied away',
    async ({ table, key }) => {
      const rows = () => write((tx) => tx.$queryRawUnsafe(`SELECT * FROM "${table}"`));
      const before = await rows();
      expect(before).toHaveLength(1);
      for (const sql of [
        `UPDATE "${table}" SET "${key}" = "${key}"`,
        `DELETE FROM "${table}"`,
        `INSERT INTO "${table}" SELECT * FROM "${table}" ON CONFLICT ("${key}") DO UPDATE SET "${key}" = excluded."${key}"`,
        `TRUNCATE "${table}" CASCADE`,
      ]) {
        await expect(write((tx) => tx.$executeRawUnsafe(sql))).rejects.toSatisfy(isKeptRowRefusal);
      }
      expect(await rows()).toEqual(before);
    },
  );

  it('a trigger that is gone or switched off is noticed, and mended', async () => {
    await write((tx) => tx.$executeRawUnsafe('DROP TRIGGER "Answer_kept_delete" ON "Answer"'));
    await write((tx) => tx.$executeRawUnsafe('ALTER TABLE "Revision" DISABLE TRIGGER "Revision_kept_update"'));
    await expect(assertDatabase(fresh.url)).rejects.toThrow(
      'Answer_kept_delete is missing; Revision_kept_update is not what it should be',
    );
    await migrateDatabase(fresh.url);
    await assertDatabase(fresh.url);
  });

  it('a second row with the same unique value is a clash', async () => {
    const { id: _, ...answer } = await reader().answer.findFirstOrThrow();
    const again = write((tx) => tx.answer.create({ data: { ...answer, id: newId() } }));
    await expect(again).rejects.toSatisfy(isUniqueClash);
  });

  it('readers are refused any write by the server', async () => {
    const smuggled = reader().customer as unknown as Transaction['customer'];
    const created = smuggled.create({ data: { id: newId(), name: 'Nobody', createdAt: now } });
    await expect(created).rejects.toThrow('read-only');
  });

  it('a write survives the rollback of one that was open when it was asked for', async () => {
    const failed = write(async (tx) => {
      await tx.customer.create({ data: { id: newId(), name: 'rolled back', createdAt: now } });
      throw new Error('changed its mind');
    });
    const kept = write((tx) => tx.customer.create({ data: { id: newId(), name: 'kept', createdAt: now } }));
    await expect(failed).rejects.toThrow('changed its mind');
    await kept;
    const names = (await reader().customer.findMany()).map(({ name }) => name);
    expect(names).toContain('kept');
    expect(names).not.toContain('rolled back');
  });

  it('instants come back to the millisecond, whatever zone the server is in', async () => {
    await write((tx) => tx.$executeRawUnsafe(`SET TIME ZONE 'Asia/Tokyo'`));
    const at = new Date('2026-07-01T23:59:59.987Z');
    const { id } = await write((tx) => tx.customer.create({ data: { id: newId(), name: 'zone', createdAt: at } }));
    expect((await reader().customer.findUniqueOrThrow({ where: { id } })).createdAt).toEqual(at);
  });

  it('the record of a job chains and verifies, with many entries at once', async () => {
    const many = Array.from({ length: 10 }, (_, index) =>
      write((tx) => appendRecord(tx, jobId, 'many', { index, name: 'Łukasz 🦦' }, now)),
    );
    await Promise.all(many);
    expect(await verifyRecord(jobId)).toEqual({ ok: true, entries: 10, erased: 0 });
  });

  it('a link opens, and does not once it is revoked', async () => {
    const may = { sign: true, remark: false, seeNames: true };
    const link = await write((tx) => issueLink(tx, { contactId, may, expiresAt: later }, now));
    expect(await openLink(linkToken(link), now)).toMatchObject({ contactId, jobId, may, mustSign: [contactId] });
    await write((tx) => revokeLink(tx, link.id, now));
    expect(await openLink(linkToken(link), now)).toBeNull();
  });

  it('the shop opens once, and its owner signs in', async () => {
    const asked = {
      code: makeSetUpCode(),
      name: 'Otterbank Press',
      unit: 'cm',
      timeZone: 'Europe/London',
      currency: 'GBP',
      phone: '',
      ownerName: 'Marit Otterbank',
      email: 'marit@example.org',
      password: 'three herons and a boat',
    } as const;
    const results = await Promise.all([openShop(asked, '192.0.2.1'), openShop(asked, '192.0.2.1')]);
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
    const headers = new Headers({ 'x-yokemark-client': '192.0.2.1' });
    expect(await signIn({ ...asked, password: 'wrong wrong wrong' }, headers)).toMatchObject({ reason: 'wrong' });
    const signedIn = await signIn(asked, headers);
    if (!signedIn.ok) throw new Error(signedIn.reason);
    headers.set('cookie', signedIn.cookies.map(({ name, value }) => `${name}=${encodeURIComponent(value)}`).join('; '));
    expect(await makerFromHeaders(headers)).toMatchObject({ role: 'owner', email: 'marit@example.org' });
  });

  it('the outbox is worked off once by two at the same time', async () => {
    const letters = makeLetters();
    for (let count = 0; count < 4; count += 1) await letters.revisionSent(jobId, now);
    const [one, other] = await Promise.all([deliverDue(letters.loaders, now), deliverDue(letters.loaders, now)]);
    expect(one.sent + other.sent).toBe(4);
  });
});
