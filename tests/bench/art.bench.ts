import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { build } from 'esbuild';
import { createWorkerPool } from '@/lib/server/workers/worker-pool';
import type { Work, WorkRequest } from './art/check-art';
import { KINDS, type Kind, makePictures } from './art/pictures';
import { type Measurement, medianOfRatios, printResult } from './measure';

// What it costs to check a picture of 4500 × 5400 px in a worker, held against unpacking the same file with sharp and
// doing nothing with it; how much memory a process takes that checks one; and how long the main thread is kept from its
// other work meanwhile.

const ROUNDS = 5;
const WARM_UPS = 3;
const TIMEOUT_MS = 120_000;

// Below the project's folder, where the packages are found that the bundles leave outside.
const built = join('.built', 'bench');
await build({
  entryPoints: ['check-art', 'peak'].map((name) => ({ in: `tests/bench/art/${name}.ts`, out: name })),
  outdir: built,
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  packages: 'external',
  tsconfig: 'tsconfig.json',
  outExtension: { '.js': '.mjs' },
});

const folder = mkdtempSync(join(tmpdir(), 'art-bench-'));
const pool = createWorkerPool({ folder: join(process.cwd(), built), threads: 1 });
const basic: Record<string, number> = {};
const all: Record<string, number> = {};
const peaks: number[] = [];
let longestBlockMs = 0;

function timeOf(work: Work, path: string): Measurement {
  return async () => {
    const { ms } = await pool.run<WorkRequest, { ms: number }>('check-art', { work, path }, { timeoutMs: TIMEOUT_MS });
    return ms;
  };
}

async function measure(kind: Kind, path: string): Promise<void> {
  const floor = timeOf('decode', path);
  const rounds = { rounds: ROUNDS, warmUps: WARM_UPS };
  const ofBasic = await medianOfRatios(timeOf('basic', path), floor, rounds);
  const delay = monitorEventLoopDelay({ resolution: 1 });
  delay.enable();
  const ofAll = await medianOfRatios(timeOf('all', path), floor, rounds);
  delay.disable();
  longestBlockMs = Math.max(longestBlockMs, delay.max / 1e6);
  basic[kind] = ofBasic.ratio;
  all[kind] = ofAll.ratio;
  const peakMb = Number(
    execFileSync(process.execPath, [join(built, 'peak.mjs'), join(process.cwd(), built), 'all', path]),
  );
  peaks.push(peakMb);
  process.stderr.write(
    `${kind}: unpacked in ${ofAll.floor.toFixed(0)} ms, basic ${ofBasic.subject.toFixed(0)} ms, all ${ofAll.subject.toFixed(0)} ms, ${peakMb.toFixed(0)} MB\n`,
  );
}

try {
  const pictures = await makePictures(folder);
  for (const kind of KINDS) await measure(kind, pictures[kind]);
} finally {
  await pool.close();
  rmSync(folder, { recursive: true });
}
printResult('art', {
  basic_ratio: basic,
  all_ratio: all,
  peak_mb: Math.max(...peaks),
  longest_block_ms: longestBlockMs,
});
