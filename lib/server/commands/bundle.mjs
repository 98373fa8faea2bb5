import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

/** @type {import('esbuild').BuildOptions} */
const shared = {
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  packages: 'external',
  sourcemap: 'linked',
  logLevel: 'warning',
  tsconfig: 'tsconfig.json',
  outExtension: { '.js': '.mjs' },
};

/**
 * Bundles every lib/server/workers/*.worker.ts into .built/workers/*.mjs, which is what worker threads run:
 * a thread cannot load TypeScript by itself.
 * @returns {Promise<string[]>} the names of the workers
 */
export async function buildWorkers() {
  const folder = 'lib/server/workers';
  const sources = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.worker.ts')) : [];
  const names = sources.map((name) => name.replace(/\.worker\.ts$/, ''));
  const outdir = join('.built', 'workers');
  mkdirSync(outdir, { recursive: true });
  const wanted = new Set(names.flatMap((name) => [`${name}.mjs`, `${name}.mjs.map`]));
  for (const name of readdirSync(outdir)) if (!wanted.has(name)) rmSync(join(outdir, name));
  if (names.length > 0) {
    const entryPoints = names.map((name) => ({ in: join(folder, `${name}.worker.ts`), out: name }));
    await build({ ...shared, entryPoints, outdir });
  }
  return names;
}

/** Bundles what Node runs besides the pages: .built/serve.mjs in front of them and .built/prepare.mjs before them. */
export async function buildServer() {
  const entryPoints = [
    { in: 'lib/server/edge/serve.ts', out: 'serve' },
    { in: 'lib/server/commands/prepare.ts', out: 'prepare' },
  ];
  await build({ ...shared, entryPoints, outdir: '.built' });
}
