import type { SqlDriverAdapterFactory } from '@prisma/driver-adapter-utils';
import { type DatabaseProvider, databaseProvider } from './database-url';
import { type FlatRead, sqliteFlatRead } from './flat-read';
import { PrismaClient as PostgresqlClient } from './generated/postgresql/client';
import { type Prisma, PrismaClient } from './generated/sqlite/client';
import { postgresqlAdapter } from './postgresql-adapter';
import { sqliteAdapter } from './sqlite-adapter';
import { makeWriteTurns } from './write-turns';

/** What `write` hands to its work: every table, inside one open transaction. */
export type Transaction = Prisma.TransactionClient;

type Delegate = Uncapitalize<Prisma.ModelName>;
type Reading =
  | 'aggregate'
  | 'count'
  | 'findFirst'
  | 'findFirstOrThrow'
  | 'findMany'
  | 'findUnique'
  | 'findUniqueOrThrow'
  | 'groupBy';

/** Every table, to look at. The connection behind it refuses writes too. */
export type Reader = { readonly [Table in Delegate]: Pick<Transaction[Table], Reading> } & Pick<
  Transaction,
  '$queryRaw'
>;

/** The tables the sign-in library reads and writes by itself. */
export type AuthTables = Pick<Transaction, 'account' | 'rateLimit' | 'session' | 'user' | 'verification'>;

/** One shop's database, open. */
export interface Database {
  readonly provider: DatabaseProvider;
  readonly reader: Reader;
  /** Rows by one statement, for what is read at every look at a customer's page. */
  readonly flatRead: FlatRead;
  /**
   * Runs `work` in a transaction of its own, after all writes asked for before it in this process. It commits when `work`
   * returns and rolls back when it throws. No mail, file or picture work belongs inside.
   */
  write<T>(work: (tx: Transaction) => Promise<T>): Promise<T>;
  /** Runs `step` when the write under way has committed, and never when it rolls back; outside a write, at once. */
  afterCommit(step: () => void): void;
  /** A connection of its own for the sign-in library; its writes stand in the same line. */
  readonly authTables: AuthTables;
  close(): Promise<void>;
}

/** Longest a transaction may stay open, and the longest wait for it to open, in ms: far beyond what any write here takes. */
const transactionLimitMs = 60_000;

const writingOperations = new Set([
  'create',
  'createMany',
  'createManyAndReturn',
  'delete',
  'deleteMany',
  'update',
  'updateMany',
  'updateManyAndReturn',
  'upsert',
]);

function clientFor(provider: DatabaseProvider, adapter: SqlDriverAdapterFactory): PrismaClient {
  if (provider === 'sqlite') return new PrismaClient({ adapter });
  // Both clients are made from one schema and differ in dialect only; the types of one serve for both.
  return new PostgresqlClient({ adapter }) as unknown as PrismaClient;
}

/** Opens the database at `url`. Connections are made at first use; `migrateDatabase` must have run before. */
export function openDatabase(url: string): Database {
  const provider = databaseProvider(url);
  const adapter = provider === 'sqlite' ? sqliteAdapter : postgresqlAdapter;
  const reader = clientFor(provider, adapter(url, 'read'));
  const writer = clientFor(provider, adapter(url, 'write'));
  const auth = clientFor(provider, adapter(url, 'write'));
  const turns = makeWriteTurns();
  const flat =
    provider === 'sqlite'
      ? sqliteFlatRead(url)
      : { read: ((statement, ...values) => reader.$queryRaw(statement, ...values)) as FlatRead, close: async () => {} };

  // The driver is synchronous: a second connection of this process that met an open transaction would stop the event
  // loop, the transaction with it, and both would wait until the busy timeout. So its writes take turns with the rest.
  const authWaiting = auth.$extends({
    query: {
      $allModels: {
        $allOperations: ({ operation, args, query }) =>
          writingOperations.has(operation) ? turns.take(async () => query(args)) : query(args),
      },
    },
  });

  return {
    provider,
    reader,
    flatRead: flat.read,
    write: (work) =>
      turns.take(() => writer.$transaction(work, { maxWait: transactionLimitMs, timeout: transactionLimitMs })),
    afterCommit: turns.afterwards,
    authTables: {
      account: authWaiting.account,
      rateLimit: authWaiting.rateLimit,
      session: authWaiting.session,
      user: authWaiting.user,
      verification: authWaiting.verification,
    } as unknown as AuthTables,
    async close() {
      await turns.take(async () => undefined);
      await Promise.all([reader.$disconnect(), flat.close(), writer.$disconnect(), auth.$disconnect()]);
    },
  };
}
