import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createWorkerPool, type WorkerPool } from '@/lib/server/workers/worker-pool';

const workers = {
  double: 'export const run = (request) => ({ twice: request.value * 2, thread: process.pid });',
  refuse: "export async function run(request) { throw new RangeError('cannot read ' + request); }",
  spin: 'export function run() { for (;;); }',
  exit: 'export function run() { process.exit(3); }',
  swell: 'export function run() { const kept = []; for (;;) kept.push(new Array(100_000).fill(kept.length)); }',
  size: 'export const run = (request) => request.byteLength;',
  gate: [
    'export async function run({ running, most }) {',
    '  const counts = [new Int32Array(running), new Int32Array(most)];',
    '  const now = Atomics.add(counts[0], 0, 1) + 1;',
    '  if (now > Atomics.load(counts[1], 0)) Atomics.store(counts[1], 0, now);',
    '  for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve));',
    '  Atomics.sub(counts[0], 0, 1);',
    '}',
  ].join('\n'),
};

let folder: string;
let pool: WorkerPool;
const timeoutMs = 60_000;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'yokemark-workers-'));
  for (const [name, source] of Object.entries(workers)) writeFileSync(join(folder, `${name}.mjs`), source);
  pool = createWorkerPool({ folder, threads: 2, heapMb: 64 });
});

afterAll(async () => {
  await pool.close();
  rmSync(folder, { recursive: true });
});

const stillWorks = () => pool.run<{ value: number }, { twice: number }>('double', { value: 21 }, { timeoutMs });

describe('the worker pool', () => {
  it('brings back what the work returns', async () => {
    expect(await stillWorks()).toMatchObject({ twice: 42 });
  });

  it('passes on what the work throws', async () => {
    await expect(pool.run('refuse', 'it', { timeoutMs })).rejects.toThrow('cannot read it');
    expect(await stillWorks()).toMatchObject({ twice: 42 });
  });

  it('ends work that overruns its time, even when it never yields, and goes on', async () => {
    await expect(pool.run('spin', null, { timeoutMs: 200 })).rejects.toMatchObject({ reason: 'tookTooLong' });
    expect(await stillWorks()).toMatchObject({ twice: 42 });
  });

  it('ends work that is no longer wanted', async () => {
    const controller = new AbortController();
    const spinning = pool.run('spin', null, { timeoutMs, signal: controller.signal });
    setImmediate(() => controller.abort());
    await expect(spinning).rejects.toMatchObject({ reason: 'stopped' });
    const late = pool.run('double', { value: 1 }, { timeoutMs, signal: controller.signal });
    await expect(late).rejects.toMatchObject({ reason: 'stopped' });
  });

  it('survives a worker that exits or fills its memory', async () => {
    await expect(pool.run('exit', null, { timeoutMs })).rejects.toMatchObject({ reason: 'crashed' });
    await expect(pool.run('swell', null, { timeoutMs })).rejects.toMatchObject({ reason: 'crashed' });
    expect(await stillWorks()).toMatchObject({ twice: 42 });
  });

  it('runs no more at once than it has threads, and in the end all of it', async () => {
    const request = { running: new SharedArrayBuffer(4), most: new SharedArrayBuffer(4) };
    await Promise.all(Array.from({ length: 12 }, () => pool.run('gate', request, { timeoutMs })));
    expect(new Int32Array(request.running)[0]).toBe(0);
    expect(new Int32Array(request.most)[0]).toBeLessThanOrEqual(2);
  });

  it('does not count the wait for a free thread as working time', async () => {
    const blockers = [0, 1].map(() => pool.run('spin', null, { timeoutMs: 2_500 }).catch(() => 'ended'));
    const waited = pool.run<{ value: number }, { twice: number }>('double', { value: 4 }, { timeoutMs: 2_000 });
    expect(await Promise.all(blockers)).toEqual(['ended', 'ended']);
    expect((await waited).twice).toBe(8);
  });

  it('hands a transferred buffer over whole', async () => {
    const pixels = new ArrayBuffer(1_000_000);
    expect(await pool.run('size', pixels, { timeoutMs, transfer: [pixels] })).toBe(1_000_000);
    expect(pixels.byteLength).toBe(0);
  });

  it('says that a worker is not built instead of hanging', async () => {
    await expect(pool.run('nobody', null, { timeoutMs })).rejects.toThrow(/nobody\.mjs.*built/);
  });
});
