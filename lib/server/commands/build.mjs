import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { removeRouteTypes } from './route-types.mjs';
import { packageScript, runOrEnd } from './run.mjs';
import { hashOf, readStamp, removeStamp, writeStamp } from './stamp.mjs';

const sources = [
  'app',
  'components',
  'lib',
  'public',
  'prisma',
  'proxy.ts',
  'instrumentation.ts',
  'next.config.ts',
  'tsconfig.json',
  'package-lock.json',
];

/** Builds pages, workers and server when any of their sources changed since they were built last. */
export async function ensureBuilt() {
  const { buildServer, buildWorkers } = await import('./bundle.mjs');
  const hash = hashOf(sources);
  const isThere = ['.next/BUILD_ID', '.built/serve.mjs', '.built/prepare.mjs'].every((path) => existsSync(path));
  if (isThere && readStamp('build') === hash) return;
  console.error('Building the pages. This takes half a minute, and only after a change.');
  removeStamp('build');
  removeRouteTypes();
  await Promise.all([buildWorkers(), buildServer()]);
  await runOrEnd('The pages could not be built.', [packageScript('next'), 'build'], {
    env: { NODE_ENV: 'production' },
    quiet: true,
  });
  writeStamp('build', hash);
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) await ensureBuilt();
