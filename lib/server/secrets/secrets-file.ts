import {
  chmodSync,
  closeSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname } from 'node:path';

function codeOf(error: unknown): unknown {
  return error instanceof Error && 'code' in error ? error.code : undefined;
}

function flushFolder(path: string): void {
  // Windows cannot open a folder, and needs no flush of it.
  if (process.platform === 'win32') return;
  const folder = openSync(dirname(path), 'r');
  fsyncSync(folder);
  closeSync(folder);
}

function writeBeside(path: string, content: string): string {
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  const beside = `${path}.${process.pid}.${process.hrtime.bigint()}`;
  const file = openSync(beside, 'wx', 0o600);
  writeSync(file, content);
  fsyncSync(file);
  closeSync(file);
  return beside;
}

/** Puts a file for the owner's eyes only where none is yet, whole or not at all; leaves one that is there as it is. */
export function writeSecretOnce(path: string, content: string): void {
  const beside = writeBeside(path, content);
  try {
    linkSync(beside, path);
  } catch (error) {
    // A disk without hard links (exFAT) cannot tell who came first; a rename is at least whole.
    if (codeOf(error) !== 'EEXIST') renameSync(beside, path);
  } finally {
    rmSync(beside, { force: true });
  }
  flushFolder(path);
}

/** Puts a file for the owner's eyes only, whole or not at all, over one that may be there. */
export function replaceSecret(path: string, content: string): void {
  renameSync(writeBeside(path, content), path);
  flushFolder(path);
}

/** Takes a file away from everybody but its owner, should somebody have let others in. */
export function closeToOthers(path: string): void {
  if (process.platform !== 'win32' && (statSync(path).mode & 0o077) !== 0) chmodSync(path, 0o600);
}
