import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import type { SqlDriverAdapter } from '@prisma/driver-adapter-utils';
import { type DatabaseProvider, databaseProvider, sqlitePath } from './database-url';
import { type Migration, migrationsFolder, readMigrations } from './migration-files';
import { postgresqlAdapter } from './postgresql-adapter';
import { noOutsideTables, withSchemaEngine } from './schema-engine';
import { sqliteAdapter } from './sqlite-adapter';
import { createTriggers, queryOver, triggerFaults } from './triggers';

/** Runs `work` over a connection of its own. None may stay open while the engine applies: it wants the file to itself. */
async function connected<T>(url: string, work: (connection: SqlDriverAdapter) => Promise<T>): Promise<T> {
  const adapter =
    databaseProvider(url) === 'sqlite' ? sqliteAdapter(url, 'migrate') : postgresqlAdapter(url, 'migrate');
  const connection = await adapter.connect();
  try {
    return await work(connection);
  } finally {
    await connection.dispose();
  }
}

async function appliedMigrations(provider: DatabaseProvider, connection: SqlDriverAdapter): Promise<unknown[][]> {
  const query = queryOver(connection);
  const table =
    provider === 'sqlite'
      ? `SELECT name FROM sqlite_master WHERE type = 'table' AND name = '_prisma_migrations'`
      : `SELECT tablename::text FROM pg_tables WHERE tablename = '_prisma_migrations' AND schemaname = current_schema()`;
  if ((await query(table)).length === 0) return [];
  return query(
    `SELECT migration_name, checksum, CASE WHEN finished_at IS NULL THEN 0 ELSE 1 END FROM "_prisma_migrations" WHERE rolled_back_at IS NULL`,
  );
}

/** The migrations a database still needs. Throws where it cannot be brought up to date by applying more. */
async function pendingMigrations(provider: DatabaseProvider, connection: SqlDriverAdapter): Promise<Migration[]> {
  const known = readMigrations(provider);
  const applied = await appliedMigrations(provider, connection);
  for (const [name, checksum, finished] of applied) {
    const migration = known.find((candidate) => candidate.name === name);
    if (!migration) {
      throw new Error(
        `The database was made by a newer Yokemark (it has the step ${name}). Update Yokemark, then start again.`,
      );
    }
    if (Number(finished) !== 1) {
      throw new Error(`The database stopped half way through the step ${name}. Put back a backup, then start again.`);
    }
    if (migration.checksum !== checksum) {
      throw new Error(
        `The step ${name} is not the one this database was made with. Undo the change to its migration.sql.`,
      );
    }
  }
  const names = new Set(applied.map(([name]) => name));
  return known.filter(({ name }) => !names.has(name));
}

/** Whether an error of the engine or the driver says that somebody else has the SQLite file open. */
function saysInUse(error: unknown): boolean {
  return error instanceof Error && /SocketTimeout|database is locked/.test(`${error.message} ${String(error.cause)}`);
}

async function apply(provider: DatabaseProvider, url: string, waitMs: number): Promise<void> {
  const migrationDirectories = readMigrations(provider).map(({ name, sql }) => ({
    path: name,
    migrationFile: { path: 'migration.sql', content: { tag: 'ok' as const, value: sql } },
  }));
  const migrationsList = {
    baseDir: migrationsFolder(provider),
    lockfile: { path: 'migration_lock.toml', content: `provider = "${provider}"` },
    shadowDbInitScript: '',
    migrationDirectories,
  };
  try {
    await withSchemaEngine(provider, url, waitMs, (engine) =>
      engine.applyMigrations({ migrationsList, filters: noOutsideTables }),
    );
  } catch (cause) {
    if (!saysInUse(cause)) throw cause;
    throw new Error('The database is in use, so it cannot be changed. Stop the Yokemark that runs, then start again.', {
      cause,
    });
  }
}

/**
 * Runs `work` while no other process migrates the same SQLite file: two first starts at once would each make the tables,
 * and the second would be left half way. The lock is on an empty file of its own, which stays; the system lets go of it
 * even after a crash.
 */
async function alone<T>(url: string, waitMs: number, work: () => Promise<T>): Promise<T> {
  const path = `${sqlitePath(url)}-migration-lock`;
  const { default: Sqlite } = await import('better-sqlite3');
  const lock = new Sqlite(path, { timeout: waitMs });
  try {
    lock.exec('BEGIN EXCLUSIVE');
    return await work();
  } finally {
    lock.close();
  }
}

/**
 * Brings the database at `url` to the present shape: makes it when it is not there, applies what is pending, and sets the
 * triggers of the kept tables. Answers with the names of the migrations applied; none, and fast, when it was up to date.
 * `waitMs` is how long to wait for another process that has the file.
 */
export async function migrateDatabase(url: string, waitMs = 30_000): Promise<{ applied: string[] }> {
  const provider = databaseProvider(url);
  if (provider === 'sqlite') mkdirSync(dirname(sqlitePath(url)), { recursive: true, mode: 0o700 });

  const pending = async () =>
    (await connected(url, (connection) => pendingMigrations(provider, connection))).map(({ name }) => name);
  const applyPending = async () => {
    const applied = await pending();
    if (applied.length > 0) await apply(provider, url, waitMs);
    return applied;
  };

  const upToDate = (await pending()).length === 0;
  const applyAlone = () => (provider === 'sqlite' ? alone(url, waitMs, applyPending) : applyPending());
  const applied = upToDate ? [] : await applyAlone();
  await connected(url, async (connection) => {
    const faults = await triggerFaults(provider, queryOver(connection));
    if (faults.length > 0) await createTriggers(provider, connection);
  });
  return { applied };
}

/** Throws unless the database at `url` is of the present shape and its triggers stand as they should. */
export async function assertDatabase(url: string): Promise<void> {
  const provider = databaseProvider(url);
  const wrong = await connected(url, async (connection) => [
    ...(await pendingMigrations(provider, connection)).map(({ name }) => `the step ${name} is not applied`),
    ...(await triggerFaults(provider, queryOver(connection))),
  ]);
  if (wrong.length > 0) throw new Error(`The database is not as it should be: ${wrong.join('; ')}.`);
}
