import type { SqlDriverAdapter, SqlDriverAdapterFactory, Transaction } from '@prisma/driver-adapter-utils';
import { sqlitePath } from './database-url';

/** How long a connection waits for another process's write, in ms (sqlite.org/c3ref/busy_timeout.html). */
const busyTimeoutMs = 15_000;

/**
 * Settings of one connection (sqlite.org/pragma.html). They are set and read back at every connect, because a reopened WAL
 * database runs at `synchronous = NORMAL` (1) under this driver whatever was set before, and a sign-off must survive a
 * power cut. `recursive_triggers` makes INSERT OR REPLACE fire the delete triggers that hold the kept tables.
 */
const settings = [
  { pragma: 'journal_mode', set: 'WAL', reads: 'wal' },
  { pragma: 'synchronous', set: 'FULL', reads: '2' },
  { pragma: 'foreign_keys', set: 'ON', reads: '1' },
  { pragma: 'recursive_triggers', set: 'ON', reads: '1' },
] as const;
const readOnlySetting = { pragma: 'query_only', set: 'ON', reads: '1' } as const;

/** Touches no row, but makes SQLite take the write lock where the statement stands. */
const takeWriteLock = 'UPDATE "Shop" SET "slot" = "slot" WHERE 1 = 0';

function statement(sql: string) {
  return { sql, args: [], argTypes: [] };
}

async function applySettings(adapter: SqlDriverAdapter, access: 'read' | 'write'): Promise<void> {
  const wanted = access === 'read' ? [...settings, readOnlySetting] : settings;
  for (const { pragma, set, reads } of wanted) {
    await adapter.executeScript(`PRAGMA ${pragma} = ${set}`);
    const result = await adapter.queryRaw(statement(`PRAGMA ${pragma}`));
    const found = String(result.rows[0]?.[0]);
    if (found !== reads) throw new Error(`SQLite kept ${pragma} at ${found} where ${set} was set.`);
  }
}

/**
 * Takes the write lock as soon as a transaction opens. The driver opens deferred transactions, and one that reads first and
 * writes later fails at once when another process wrote in between; one that writes first waits its turn.
 */
async function startLocked(start: () => Promise<Transaction>): Promise<Transaction> {
  const transaction = await start();
  try {
    await transaction.executeRaw(statement(takeWriteLock));
  } catch (error) {
    await transaction.executeRaw(statement('ROLLBACK'));
    await transaction.rollback();
    throw error;
  }
  return transaction;
}

/**
 * Connections to the SQLite file of `url`. `migrate` leaves transactions as the driver opens them, since the tables may not
 * be there yet.
 */
export function sqliteAdapter(url: string, access: 'read' | 'write' | 'migrate'): SqlDriverAdapterFactory {
  return {
    provider: 'sqlite',
    adapterName: '@prisma/adapter-better-sqlite3',
    async connect() {
      const { PrismaBetterSqlite3 } = await import('@prisma/adapter-better-sqlite3');
      const factory = new PrismaBetterSqlite3(
        { url: `file:${sqlitePath(url)}`, timeout: busyTimeoutMs },
        { timestampFormat: 'iso8601' },
      );
      const adapter = await factory.connect();
      await applySettings(adapter, access === 'read' ? 'read' : 'write');
      if (access === 'migrate') return adapter;
      return {
        provider: adapter.provider,
        adapterName: adapter.adapterName,
        queryRaw: (query) => adapter.queryRaw(query),
        executeRaw: (query) => adapter.executeRaw(query),
        executeScript: (script) => adapter.executeScript(script),
        startTransaction: (level) =>
          access === 'read' ? adapter.startTransaction(level) : startLocked(() => adapter.startTransaction(level)),
        dispose: () => adapter.dispose(),
      };
    },
  };
}
