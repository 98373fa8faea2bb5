import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { runOrEnd } from './run.mjs';

/** @param {string} path @returns {Record<string, { version?: string, optional?: boolean, link?: boolean }>} */
function lockedPackages(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')).packages : {};
}

/**
 * Whether every package of the lock file is installed in its version, going by the list npm leaves in node_modules when
 * it has finished. Parts that are optional (made for other systems) may be missing.
 */
function isInstalled() {
  const installed = lockedPackages('node_modules/.package-lock.json');
  return Object.entries(lockedPackages('package-lock.json'))
    .filter(([path, entry]) => path !== '' && !entry.optional && !entry.link)
    .every(([path, entry]) => installed[path]?.version === entry.version && existsSync(`${path}/package.json`));
}

function runNpmCi() {
  const npm = process.env.npm_execpath;
  const args = ['ci', '--include=dev'];
  const result = npm
    ? spawnSync(process.execPath, [npm, ...args], { stdio: 'inherit' })
    : spawnSync('npm', args, { stdio: 'inherit', shell: process.platform === 'win32' });
  if (result.status === 0) return;
  console.error(
    'The parts Yokemark is built from could not be installed. Is this computer online? Run this again then.',
  );
  process.exit(1);
}

/** Installs what package-lock.json names when that is not what is there, and makes the database clients. */
export async function ensureInstalled() {
  if (!isInstalled()) {
    console.error('Installing the parts Yokemark is built from. This takes a minute or two, once.');
    runNpmCi();
  }
  await runOrEnd('The database clients could not be made.', ['lib/server/db/generate-clients.mjs'], { quiet: true });
}
