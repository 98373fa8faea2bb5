import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { DatabaseProvider } from './database-url';
import { inDialect, migrationsFolder, prismaFolder, readSchema } from './migration-files';
import { inMemory, noOutsideTables, withSchemaEngine } from './schema-engine';

const providers: DatabaseProvider[] = ['sqlite', 'postgresql'];

async function stepsBetween(provider: DatabaseProvider, before: string | null): Promise<string> {
  const datamodel = (content: string) => ({
    tag: 'schemaDatamodel' as const,
    files: [{ path: 'schema.prisma', content }],
  });
  const { stdout } = await withSchemaEngine('sqlite', inMemory, 0, (engine) =>
    engine.diff({
      from: before === null ? { tag: 'empty' } : datamodel(inDialect(before, provider)),
      to: datamodel(readSchema(provider)),
      script: true,
      exitCode: null,
      filters: noOutsideTables,
    }),
  );
  return stdout ?? '';
}

/**
 * Writes the migrations, one for each kind of database, that lead from the schema of the last migration to the schema as it
 * stands. `name` is kebab-case and says what changed; `now` orders it. Answers with the folders written.
 */
export async function makeMigration(name: string, now: Date): Promise<string[]> {
  const lastPath = join(prismaFolder(), 'migrations', 'last-schema.prisma');
  const before = existsSync(lastPath) ? readFileSync(lastPath, 'utf8') : null;
  const stamp = now.toISOString().replace(/\D/g, '').slice(0, 14);
  const written: string[] = [];
  for (const provider of providers) {
    const sql = await stepsBetween(provider, before);
    if (sql.includes('This is an empty migration')) continue;
    const folder = join(migrationsFolder(provider), `${stamp}_${name.replaceAll('-', '_')}`);
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'migration.sql'), sql);
    writeFileSync(join(migrationsFolder(provider), 'migration_lock.toml'), `provider = "${provider}"\n`);
    written.push(folder);
  }
  writeFileSync(lastPath, readSchema('sqlite'));
  return written;
}
