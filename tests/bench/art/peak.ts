import { existsSync, readFileSync } from 'node:fs';
import { createWorkerPool } from '@/lib/server/workers/worker-pool';

// A process of its own that has one picture checked in a worker and prints the most memory it ever held, in MB.

const [folder = '', work = '', path = ''] = process.argv.slice(2);
const pool = createWorkerPool({ folder, threads: 1 });
await pool.run('check-art', { work, path }, { timeoutMs: 120_000 });
await pool.close();
process.stdout.write(String(peakMb()));

/** Of this program alone: what getrusage says begins with what the process held that started it. */
function peakMb(): number {
  const status = '/proc/self/status';
  const peakKb = existsSync(status) ? /VmHWM:\s+(\d+) kB/.exec(readFileSync(status, 'utf8'))?.[1] : undefined;
  return Number(peakKb ?? process.resourceUsage().maxRSS) / 1024;
}
