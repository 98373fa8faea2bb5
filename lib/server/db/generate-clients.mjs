// Makes the database clients from prisma/schema.prisma: one for SQLite and one for PostgreSQL, alike but for the dialect.
// Runs on `npm install` and at every start, and does nothing when the schema is the one the clients were made from.
//
// Needs no network: the prisma command only checks that its schema engine is a file and never runs it to generate, so the
// running node stands in for it.

import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..', '..');
const schemaPath = join(root, 'prisma', 'schema.prisma');
const generated = join(here, 'generated');
const stampPath = join(generated, 'made-from.txt');
const require = createRequire(import.meta.url);

/** @param {string} path */
function generate(path) {
  const command = require.resolve('prisma/build/index.js');
  execFileSync(process.execPath, [command, 'generate', '--schema', path, '--no-hints'], {
    cwd: root,
    env: { ...process.env, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, PRISMA_HIDE_UPDATE_MESSAGE: '1' },
    stdio: 'pipe',
  });
}

const schema = readFileSync(schemaPath, 'utf8');
const { version } = require('prisma/package.json');
const stamp = createHash('sha256').update(`${version}\n${schema}`).digest('hex');

if (!existsSync(stampPath) || readFileSync(stampPath, 'utf8') !== stamp) {
  rmSync(generated, { recursive: true, force: true });
  mkdirSync(generated, { recursive: true });
  generate(schemaPath);

  const derivedPath = join(generated, 'postgresql.prisma');
  const derived = schema
    .replace('provider = "sqlite"', 'provider = "postgresql"')
    .replace('../lib/server/db/generated/sqlite', './postgresql');
  writeFileSync(derivedPath, derived);
  generate(derivedPath);

  writeFileSync(stampPath, stamp);
}
