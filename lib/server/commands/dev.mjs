import { requireNode } from './node-version.mjs';

requireNode();

const { ensureInstalled } = await import('./install.mjs');
await ensureInstalled();
const { buildServer, buildWorkers } = await import('./bundle.mjs');
await Promise.all([buildWorkers(), buildServer()]);
const { runOrEnd } = await import('./run.mjs');
await runOrEnd('The database could not be prepared, so nothing was started.', ['.built/prepare.mjs', '--demo']);

Object.assign(process.env, { NODE_ENV: 'development', NEXT_TELEMETRY_DISABLED: '1' });
process.argv.push('--dev');
await import(new URL('../../../.built/serve.mjs', import.meta.url).href);
