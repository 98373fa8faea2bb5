import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The script behind a package's command, to be run with this Node on any system.
 * @param {string} packageName
 * @param {string} [command]
 */
export function packageScript(packageName, command = packageName) {
  const folder = join('node_modules', packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const script = typeof bin === 'string' ? bin : bin?.[command];
  if (!script) throw new Error(`${packageName} has no command ${command}.`);
  return join(folder, script);
}

/**
 * Runs a script with this Node and waits for it. With `quiet` its output is shown only when it fails.
 * @param {string[]} args script and its arguments
 * @param {{ env?: Record<string, string>, quiet?: boolean }} [options]
 * @returns {Promise<number>} the exit code; 1 when a signal ended it
 */
export function runNode(args, { env = {}, quiet = false } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, args, {
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', ...env },
      stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    });
    /** @type {Buffer[]} */
    const output = [];
    child.stdout?.on('data', (chunk) => output.push(chunk));
    child.stderr?.on('data', (chunk) => output.push(chunk));
    child.on('error', reject);
    child.on('close', (code) => {
      if (quiet && code !== 0) process.stderr.write(Buffer.concat(output));
      resolve(code ?? 1);
    });
  });
}

/**
 * Runs a script that has to succeed; ends this process with its exit code when it does not.
 * @param {string} failure what to say then
 * @param {string[]} args
 * @param {{ env?: Record<string, string>, quiet?: boolean }} [options]
 */
export async function runOrEnd(failure, args, options) {
  const code = await runNode(args, options);
  if (code === 0) return;
  console.error(failure);
  process.exit(code);
}
