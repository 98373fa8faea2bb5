import { resolve } from 'node:path';

export type DatabaseProvider = 'sqlite' | 'postgresql';

/** Which database an address means: `file:…` is SQLite, `postgresql://…` (or `postgres://…`) is PostgreSQL. */
export function databaseProvider(url: string): DatabaseProvider {
  if (url.startsWith('file:')) return 'sqlite';
  if (/^postgres(ql)?:\/\//.test(url)) return 'postgresql';
  throw new Error(
    `DATABASE_URL is ${JSON.stringify(url.split('@').at(-1))}, which is neither a file (file:./data/yokemark.db) nor a PostgreSQL address (postgresql://…).`,
  );
}

/** The absolute path of a SQLite address; a relative one counts from the working directory. */
export function sqlitePath(url: string): string {
  const path = url.replace(/^file:(\/\/(?=\/))?/, '').split('?')[0] ?? '';
  if (path === '') throw new Error(`DATABASE_URL names no file: ${url}`);
  return resolve(path);
}
