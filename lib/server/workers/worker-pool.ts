import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Piscina } from 'piscina';

export type WorkerRunOptions = {
  /** From when the work begins, not from when it is asked for. */
  timeoutMs: number;
  /** Buffers handed over instead of copied; they are empty here afterwards. */
  transfer?: readonly ArrayBuffer[];
  /** Stops the work when whoever asked for it no longer wants it. */
  signal?: AbortSignal;
};

/** Why work ended without a result, when it was not the work itself that threw. */
export type WorkerEnd = 'tookTooLong' | 'stopped' | 'crashed';

/** The work did not end by itself. An error the work threw is passed on as it is. */
export class WorkerError extends Error {
  override readonly name = 'WorkerError';

  constructor(
    readonly reason: WorkerEnd,
    workerName: string,
    options?: ErrorOptions,
  ) {
    super(`worker ${workerName}: ${reason}`, options);
  }
}

export type WorkerPool = {
  run: <Request, Result>(workerName: string, request: Request, options: WorkerRunOptions) => Promise<Result>;
  close: () => Promise<void>;
};

type PoolOptions = {
  /** Holds `<name>.mjs`, each exporting `run(request)`. */
  folder: string;
  threads: number;
  /** The heap a worker may fill before it is ended, in MB. */
  heapMb?: number;
};

/** An idle worker keeps what it has loaded for this long. */
const IDLE_MS = 30_000;

function isCrash(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  const code = 'code' in error ? error.code : undefined;
  return code === 'ERR_WORKER_OUT_OF_MEMORY' || /^worker exited with code/i.test(error.message);
}

/**
 * Threads for slow work, at most `threads` at once; what comes later waits its turn. A worker that overruns its time or
 * crashes is replaced, and only the work it was doing fails.
 */
export function createWorkerPool({ folder, threads, heapMb = 1024 }: PoolOptions): WorkerPool {
  const pool = new Piscina({
    minThreads: 0,
    maxThreads: threads,
    idleTimeout: IDLE_MS,
    // Waiting by Atomics would stop the worker's own event loop between two tasks.
    atomics: 'disabled',
    resourceLimits: { maxOldGenerationSizeMb: heapMb },
  });
  // A crash between two tasks has no task to fail; without a listener it would end the process.
  pool.on('error', (error) => console.error('A worker crashed while idle.', error));

  let free = threads;
  const waiting: (() => void)[] = [];

  async function takeTurn(): Promise<void> {
    if (free > 0) free -= 1;
    else await new Promise<void>((resolve) => waiting.push(resolve));
  }

  function passTurn(): void {
    const next = waiting.shift();
    if (next) next();
    else free += 1;
  }

  async function run<Request, Result>(
    workerName: string,
    request: Request,
    { timeoutMs, transfer = [], signal }: WorkerRunOptions,
  ): Promise<Result> {
    const filename = join(folder, `${workerName}.mjs`);
    if (!existsSync(filename))
      throw new Error(`There is no worker at ${filename}; the bundles have to be built first.`);
    await takeTurn();
    const limit = new AbortController();
    const timer = setTimeout(() => limit.abort(), timeoutMs);
    try {
      if (signal?.aborted) throw new WorkerError('stopped', workerName);
      return (await pool.run(request, {
        filename,
        name: 'run',
        transferList: [...transfer],
        signal: signal ? AbortSignal.any([signal, limit.signal]) : limit.signal,
      })) as Result;
    } catch (error) {
      if (limit.signal.aborted) throw new WorkerError('tookTooLong', workerName, { cause: error });
      if (signal?.aborted) throw new WorkerError('stopped', workerName, { cause: error });
      throw isCrash(error) ? new WorkerError('crashed', workerName, { cause: error }) : error;
    } finally {
      clearTimeout(timer);
      passTurn();
    }
  }

  return { run, close: () => pool.destroy() };
}
