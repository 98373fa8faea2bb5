import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { onShutdown } from '../edge/on-shutdown';
import { createWorkerPool, type WorkerPool, type WorkerRunOptions } from './worker-pool';

// Routes are bundled apart; all of one process share its threads.
const key = Symbol.for('yokemark.workers');
const shared = globalThis as typeof globalThis & { [key]?: WorkerPool };

function workerPool(): WorkerPool {
  if (shared[key]) return shared[key];
  const pool = createWorkerPool({
    folder: join(process.cwd(), '.built', 'workers'),
    threads: availableParallelism() > 2 ? 2 : 1,
  });
  shared[key] = pool;
  onShutdown('workers', async () => {
    delete shared[key];
    await pool.close();
  });
  return pool;
}

/**
 * Runs `run(request)` of lib/server/workers/<workerName>.worker.ts in a thread. Request and result are copied, so they
 * are plain data. Rejects with a `WorkerError` when the work overran its time, was stopped or crashed, and with the
 * work's own error when it threw.
 */
export function runInWorker<Request, Result>(
  workerName: string,
  request: Request,
  options: WorkerRunOptions,
): Promise<Result> {
  return workerPool().run<Request, Result>(workerName, request, options);
}
