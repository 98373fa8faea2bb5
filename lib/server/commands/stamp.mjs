import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = join('.built', 'stamps');

/** @param {string} path @returns {string[]} */
function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .filter((name) => name !== 'generated')
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}

/**
 * One hash over the names and contents of all files under the given paths, and this Node's version.
 * @param {string[]} paths
 */
export function hashOf(paths) {
  const hash = createHash('sha256').update(process.version);
  for (const file of paths.flatMap(filesUnder)) {
    const content = readFileSync(file);
    hash.update(`\n${file.replaceAll('\\', '/')} ${content.length}\n`).update(content);
  }
  return hash.digest('hex');
}

/** @param {string} name @returns {string | null} what was stamped last, if anything was */
export function readStamp(name) {
  const path = join(folder, name);
  return existsSync(path) ? readFileSync(path, 'utf8') : null;
}

/** @param {string} name @param {string} value */
export function writeStamp(name, value) {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, name), value);
}

/** @param {string} name */
export function removeStamp(name) {
  rmSync(join(folder, name), { force: true });
}
