import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { DatabaseProvider } from './database-url';

/** One step of the database's shape. */
export interface Migration {
  readonly name: string;
  readonly sql: string;
  /** SHA-256 of the SQL in hex, as the table of applied migrations keeps it. */
  readonly checksum: string;
}

/** The folder `prisma/`, found upwards from this file, so that bundled code finds it too. */
export function prismaFolder(): string {
  let folder = import.meta.dirname;
  while (!existsSync(join(folder, 'prisma', 'schema.prisma'))) {
    const parent = dirname(folder);
    if (parent === folder) throw new Error(`No prisma/schema.prisma above ${import.meta.dirname}.`);
    folder = parent;
  }
  return join(folder, 'prisma');
}

/** Where the migrations for one kind of database lie. */
export function migrationsFolder(provider: DatabaseProvider): string {
  return join(prismaFolder(), 'migrations', provider);
}

/** All migrations for one kind of database, oldest first. */
export function readMigrations(provider: DatabaseProvider): Migration[] {
  const folder = migrationsFolder(provider);
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => {
      const sql = readFileSync(join(folder, name, 'migration.sql'), 'utf8');
      return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
    });
}

/** A schema in the dialect of `provider`. */
export function inDialect(schema: string, provider: DatabaseProvider): string {
  return schema.replace('provider = "sqlite"', `provider = "${provider}"`);
}

/** The schema as it stands, in the dialect of `provider`. */
export function readSchema(provider: DatabaseProvider): string {
  return inDialect(readFileSync(join(prismaFolder(), 'schema.prisma'), 'utf8'), provider);
}
