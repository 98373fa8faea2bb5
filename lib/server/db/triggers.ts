import type { SqlDriverAdapter } from '@prisma/driver-adapter-utils';
import type { DatabaseProvider } from './database-url';
import { keptTables, refusalMark } from './kept-tables';

/** A trigger as it should stand: what the database says of it, word for word, and the SQL that makes it so. */
interface Trigger {
  readonly name: string;
  readonly table: string;
  readonly standsAs: string;
  readonly create: string;
}

type Query = (sql: string) => Promise<unknown[][]>;

function sqliteTriggers(): Trigger[] {
  const trigger = (table: string, verb: string, when: string, event: string): Trigger => {
    const name = `${table}_kept_${verb}`;
    const create = `CREATE TRIGGER "${name}" BEFORE ${event} ON "${table}"${when} BEGIN SELECT RAISE(ABORT, '${refusalMark}: ${table}, ${verb}'); END`;
    return { name, table, standsAs: create, create };
  };
  return keptTables.flatMap(({ table, key }) => [
    trigger(table, 'update', '', 'UPDATE'),
    trigger(table, 'delete', '', 'DELETE'),
    trigger(table, 'insert', ` WHEN EXISTS (SELECT 1 FROM "${table}" WHERE "${key}" = NEW."${key}")`, 'INSERT'),
  ]);
}

const refuseFunction = {
  body: `BEGIN RAISE EXCEPTION '${refusalMark}: %, %', TG_TABLE_NAME, lower(TG_OP) USING ERRCODE = 'restrict_violation'; END`,
  name: 'yokemark_refuse',
};

// An insert over an existing key needs no trigger here: PostgreSQL has no INSERT OR REPLACE, and ON CONFLICT DO UPDATE is
// an update to its triggers.
function postgresqlTriggers(): Trigger[] {
  return keptTables.flatMap(({ table }) =>
    [
      { verb: 'update', event: 'UPDATE', level: 'ROW' },
      { verb: 'delete', event: 'DELETE', level: 'ROW' },
      { verb: 'truncate', event: 'TRUNCATE', level: 'STATEMENT' },
    ].map(({ verb, event, level }) => {
      const name = `${table}_kept_${verb}`;
      const create = `CREATE TRIGGER "${name}" BEFORE ${event} ON "${table}" FOR EACH ${level} EXECUTE FUNCTION ${refuseFunction.name}()`;
      // O: fires for everybody but a replica (pg_trigger.tgenabled).
      return { name, table, standsAs: `O ${refuseFunction.body} ${create}`, create };
    }),
  );
}

function wantedTriggers(provider: DatabaseProvider): Trigger[] {
  return provider === 'sqlite' ? sqliteTriggers() : postgresqlTriggers();
}

const listTriggers: Record<DatabaseProvider, string> = {
  sqlite: `SELECT name, sql, tbl_name FROM sqlite_master WHERE type = 'trigger'`,
  postgresql: `SELECT t.tgname::text, t.tgenabled::text || ' ' || p.prosrc || ' ' || pg_get_triggerdef(t.oid, true), c.relname::text
    FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid JOIN pg_proc p ON p.oid = t.tgfoid
    WHERE NOT t.tgisinternal AND c.relnamespace = current_schema()::regnamespace`,
};

/** What is wrong with the triggers of a database, one line each; none when they stand as they should. */
export async function triggerFaults(provider: DatabaseProvider, query: Query): Promise<string[]> {
  const found = new Map((await query(listTriggers[provider])).map(([name, text]) => [String(name), String(text)]));
  const wanted = wantedTriggers(provider);
  const missing = wanted.filter(({ name }) => !found.has(name)).map(({ name }) => `${name} is missing`);
  const changed = wanted
    .filter(({ name, standsAs }) => found.has(name) && found.get(name) !== standsAs)
    .map(({ name }) => `${name} is not what it should be`);
  const names = new Set(wanted.map(({ name }) => name));
  const strange = [...found.keys()].filter((name) => !names.has(name)).map((name) => `${name} is not known`);
  return [...missing, ...changed, ...strange].sort();
}

/**
 * Makes the triggers of all kept tables, and removes any other, in one transaction. To be run after migrations: rebuilding
 * a table drops its triggers without a word.
 */
export async function createTriggers(provider: DatabaseProvider, connection: SqlDriverAdapter): Promise<void> {
  const onTable = provider === 'postgresql';
  const wanted = wantedTriggers(provider);
  const there = await queryOver(connection)(listTriggers[provider]);
  const drops = [
    ...there.map(([name, , table]) => ({ name: String(name), table: String(table) })),
    // Another process may make them between the look and the transaction.
    ...wanted,
  ].map(({ name, table }) => `DROP TRIGGER IF EXISTS "${name}"${onTable ? ` ON "${table}"` : ''}`);
  const first = onTable
    ? [
        `CREATE OR REPLACE FUNCTION ${refuseFunction.name}() RETURNS trigger LANGUAGE plpgsql AS $refuse$${refuseFunction.body}$refuse$`,
      ]
    : [];
  const creates = wanted.map(({ create }) => create);
  const transaction = await connection.startTransaction();
  const run = (sql: string) => transaction.executeRaw({ sql, args: [], argTypes: [] });
  try {
    for (const sql of [...drops, ...first, ...creates]) await run(sql);
    await run('COMMIT');
    await transaction.commit();
  } catch (error) {
    await run('ROLLBACK');
    await transaction.rollback();
    throw error;
  }
}

/** Reads rows over a bare connection. */
export function queryOver(connection: SqlDriverAdapter): Query {
  return async (sql) => (await connection.queryRaw({ sql, args: [], argTypes: [] })).rows;
}
