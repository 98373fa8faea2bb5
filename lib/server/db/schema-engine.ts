import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { SqlDriverAdapter, SqlMigrationAwareDriverAdapterFactory } from '@prisma/driver-adapter-utils';
import type { SchemaEngine } from '@prisma/schema-engine-wasm';
import { type DatabaseProvider, databaseProvider, sqlitePath } from './database-url';
import { readSchema } from './migration-files';
import { migratingPostgresql } from './postgresql-adapter';

type Bindings = typeof import('@prisma/schema-engine-wasm/schema_engine_bg') & {
  __wbg_set_wasm(exports: WebAssembly.Exports): void;
};

/** Nothing in the database is looked after by somebody else. */
export const noOutsideTables = { externalTables: [], externalEnums: [] };

async function loadBindings(): Promise<Bindings> {
  const path = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const bindings: Bindings = await import(path);
  const bytes = await readFile(path.replace(/\.js$/, '.wasm'));
  const { instance } = await WebAssembly.instantiate(bytes, { './schema_engine_bg.js': { ...bindings } });
  bindings.__wbg_set_wasm(instance.exports);
  const start = instance.exports.__wbindgen_start;
  if (typeof start !== 'function') throw new Error('The schema engine has no start function.');
  start();
  return bindings;
}

// The engine reports its own panics to an object of this name; without one the report itself fails and hides them.
const panics = {
  set_message(message: string) {
    console.error(message);
  },
};

// Once a process: the bindings keep views of the first instance's memory and would read a second one's through them.
let loaded: Promise<Bindings> | undefined;

async function factoryFor(url: string, waitMs: number): Promise<SqlMigrationAwareDriverAdapterFactory> {
  if (url !== inMemory && databaseProvider(url) === 'postgresql') return migratingPostgresql(url);
  const { PrismaBetterSqlite3 } = await import('@prisma/adapter-better-sqlite3');
  return new PrismaBetterSqlite3({ url: url === inMemory ? inMemory : `file:${sqlitePath(url)}`, timeout: waitMs });
}

/** An address for comparing schemas, of either dialect, without a database. */
export const inMemory = ':memory:';

/**
 * Runs `work` with Prisma's own schema engine over the database at `url`. It is the engine as WebAssembly over a driver
 * adapter: it applies and compares migrations without the native engine that the prisma command would fetch. It wants a
 * SQLite file to itself, and waits `waitMs` for that.
 */
export async function withSchemaEngine<T>(
  provider: DatabaseProvider,
  url: string,
  waitMs: number,
  work: (engine: SchemaEngine) => Promise<T>,
): Promise<T> {
  Object.assign(globalThis, { PRISMA_WASM_PANIC_REGISTRY: panics });
  loaded ??= loadBindings();
  const [{ bindMigrationAwareSqlAdapterFactory }, bindings, factory] = await Promise.all([
    import('@prisma/driver-adapter-utils'),
    loaded,
    factoryFor(url, waitMs),
  ]);
  // Freeing the engine leaves its connections open, and the file locked with them.
  const connections: SqlDriverAdapter[] = [];
  const noted = async (connecting: Promise<SqlDriverAdapter>) => {
    const connection = await connecting;
    connections.push(connection);
    return connection;
  };
  try {
    const engine = await bindings.SchemaEngine.new(
      { datamodels: [['schema.prisma', readSchema(provider)]] },
      () => undefined,
      bindMigrationAwareSqlAdapterFactory({
        provider: factory.provider,
        adapterName: factory.adapterName,
        connect: () => noted(factory.connect()),
        connectToShadowDb: () => noted(factory.connectToShadowDb()),
      }),
    );
    try {
      return await work(engine);
    } finally {
      engine.free();
    }
  } finally {
    await Promise.all(connections.map((connection) => connection.dispose()));
  }
}
