import { execFile } from 'node:child_process';
import { cpSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import Sqlite from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Prisma } from '@/lib/server/db/generated/sqlite/client';
import { keptTables } from '@/lib/server/db/kept-tables';
import { assertDatabase, migrateDatabase } from '@/lib/server/db/migrate';
import { prismaFolder, readMigrations, readSchema } from '@/lib/server/db/migration-files';
import { noOutsideTables, withSchemaEngine } from '@/lib/server/db/schema-engine';
import { type FreshDatabase, freshDatabase } from './database';

let fresh: FreshDatabase;
beforeAll(async () => {
  fresh = await freshDatabase();
});
afterAll(() => fresh.remove());

function copyOfDatabase(name: string) {
  const path = join(fresh.folder, `${name}.db`);
  cpSync(join(fresh.folder, 'yokemark.db'), path);
  return { url: `file:${path}`, file: new Sqlite(path) };
}

describe('migrations', () => {
  it('lead to the schema, with nothing over and nothing missing', async () => {
    const schema = { files: [{ path: 'schema.prisma', content: readSchema('sqlite') }] };
    const difference = await withSchemaEngine('sqlite', copyOfDatabase('compared').url, 5_000, (engine) =>
      engine.diff({
        from: { tag: 'schemaDatasource', configDir: fresh.folder, ...schema },
        to: { tag: 'schemaDatamodel', ...schema },
        script: true,
        exitCode: null,
        filters: noOutsideTables,
      }),
    );
    expect(difference.stdout?.trim()).toBe('-- This is an empty migration.');
  });

  it('were made from the schema as it stands, for both kinds of database', () => {
    const last = readFileSync(join(prismaFolder(), 'migrations', 'last-schema.prisma'), 'utf8');
    expect(last).toBe(readSchema('sqlite'));
    expect(readMigrations('sqlite').length).toBeGreaterThan(0);
    expect(readMigrations('postgresql').length).toBeGreaterThan(0);
  });

  it('apply once: a second time finds nothing to do', async () => {
    const url = `file:${join(fresh.folder, 'new', 'shop.db')}`;
    expect((await migrateDatabase(url)).applied).toEqual(readMigrations('sqlite').map(({ name }) => name));
    expect(await migrateDatabase(url)).toEqual({ applied: [] });
    // Only the owner may look into a folder that holds customers.
    expect(statSync(join(fresh.folder, 'new')).mode & 0o777).toBe(0o700);
  });

  it('apply once when two processes start at the same moment', async () => {
    const url = `file:${join(fresh.folder, 'raced.db')}`;
    const script = join(import.meta.dirname, 'migrating-process.ts');
    const run = async () =>
      (await promisify(execFile)(process.execPath, ['--import', 'tsx', script, url])).stdout.trim();
    const applied = await Promise.all([run(), run()]);
    expect(applied.map(Number).sort()).toEqual([0, readMigrations('sqlite').length]);
    await assertDatabase(url);
  });

  it('say so and change nothing while somebody else has the file open', async () => {
    const busy = copyOfDatabase('busy');
    busy.file.exec('DELETE FROM "_prisma_migrations"; PRAGMA journal_mode = WAL; BEGIN; SELECT * FROM "Shop"');
    await expect(migrateDatabase(busy.url, 100)).rejects.toThrow('The database is in use');
    expect(busy.file.prepare('SELECT count(*) AS n FROM "_prisma_migrations"').get()).toEqual({ n: 0 });
  });

  it('refuse a database from a newer version, one left half way, and one made by an edited step', async () => {
    const set = 'UPDATE "_prisma_migrations" SET';
    const newer = copyOfDatabase('newer');
    newer.file.exec(`${set} migration_name = '99990101000000_later'`);
    await expect(migrateDatabase(newer.url)).rejects.toThrow('made by a newer Yokemark');

    const halfWay = copyOfDatabase('half-way');
    halfWay.file.exec(`${set} finished_at = NULL`);
    await expect(migrateDatabase(halfWay.url)).rejects.toThrow('stopped half way');

    const edited = copyOfDatabase('edited');
    edited.file.exec(`${set} checksum = 'other'`);
    await expect(migrateDatabase(edited.url)).rejects.toThrow('is not the one this database was made with');
  });
});

describe('kept tables', () => {
  it('are the tables the schema calls kept', () => {
    const kept = [...readSchema('sqlite').matchAll(/^\/\/\/ Kept\.[^{]*?^model (\w+)/gm)].map(([, name]) => name);
    expect(kept.sort()).toEqual(keptTables.map(({ table }) => table).sort());
    for (const { table } of keptTables) expect(Object.keys(Prisma.ModelName)).toContain(table);
  });
});
