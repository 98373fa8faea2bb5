import { requireNode } from './node-version.mjs';

requireNode();

// Only now: on a fresh clone nothing is installed yet, and an old Node would stumble over these files.
const { ensureInstalled } = await import('./install.mjs');
await ensureInstalled();
const { ensureBuilt } = await import('./build.mjs');
await ensureBuilt();
const { runOrEnd } = await import('./run.mjs');
await runOrEnd('The database could not be prepared, so nothing was started.', ['.built/prepare.mjs', '--demo']);

Object.assign(process.env, { NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' });
await import(new URL('../../../.built/serve.mjs', import.meta.url).href);
