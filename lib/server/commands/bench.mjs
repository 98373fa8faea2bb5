// npm run bench -- NAME runs tests/bench/NAME.bench.ts and prints its one line of JSON; all other words go to stderr.

import { requireNode } from './node-version.mjs';

requireNode();

const { ensureInstalled } = await import('./install.mjs');
await ensureInstalled();

const { spawn } = await import('node:child_process');
const { existsSync, readdirSync } = await import('node:fs');
const { packageScript } = await import('./run.mjs');

const folder = 'tests/bench';
const ending = '.bench.ts';
const [name = ''] = process.argv.slice(2);
const names = existsSync(folder)
  ? readdirSync(folder)
      .filter((file) => file.endsWith(ending))
      .map((file) => file.slice(0, -ending.length))
  : [];

if (!names.includes(name)) {
  console.error(`Name a bench: ${names.join(', ') || 'there is none yet'}.`);
  process.exit(1);
}

const { ensureBuilt } = await import('./build.mjs');
await ensureBuilt();

/** @returns {Promise<{ code: number, output: string }>} */
function runBench() {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [packageScript('tsx'), `${folder}/${name}${ending}`], {
      stdio: ['ignore', 'pipe', 'inherit'],
      env: { ...process.env, NODE_ENV: 'production' },
    });
    let output = '';
    child.stdout.setEncoding('utf8').on('data', (text) => {
      output += text;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code: code ?? 1, output }));
  });
}

/** @param {string} line */
function isResult(line) {
  try {
    return JSON.parse(line).bench === name;
  } catch {
    return false;
  }
}

const { code, output } = await runBench();
const lines = output.split('\n').filter((line) => line.trim() !== '');
if (code !== 0 || lines.length !== 1 || !isResult(lines[0] ?? '')) {
  process.stderr.write(output);
  console.error(`The bench ${name} did not come to a result.`);
  process.exit(1);
}
console.log(lines[0]);
