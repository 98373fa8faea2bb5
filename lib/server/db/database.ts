import { environment } from '../env/environment';
import type { FlatRead } from './flat-read';
import { type Database, openDatabase, type Reader, type Transaction } from './open-database';

// The page bundle and the server around it each load this module, and a development server loads it again at every change.
// One process must have one line of writes, so the open database hangs on the process, not on the module.
const slot = Symbol.for('yokemark.database');
const holder = globalThis as { [slot]?: Database };

/** The database named by the environment, opened at first use. */
export function database(): Database {
  holder[slot] ??= openDatabase(environment().databaseUrl);
  return holder[slot];
}

/** Every table of the shop's database, to look at. */
export function reader(): Reader {
  return database().reader;
}

/** Rows of the shop's database by one statement, for what is read at every look at a customer's page. */
export const flatRead: FlatRead = (statement, ...values) => database().flatRead(statement, ...values);

/**
 * Runs `work` in a transaction of its own in the shop's database, after all writes asked for before it. It commits when
 * `work` returns and rolls back when it throws. No mail, file or picture work belongs inside.
 */
export function write<T>(work: (tx: Transaction) => Promise<T>): Promise<T> {
  return database().write(work);
}

/** Runs `step` when the write under way has committed, and never when it rolls back; outside a write, at once. */
export function afterCommit(step: () => void): void {
  database().afterCommit(step);
}

/** Ends the writes under way and lets go of the database; the next use opens it again. */
export async function closeDatabase(): Promise<void> {
  const open = holder[slot];
  holder[slot] = undefined;
  await open?.close();
}
