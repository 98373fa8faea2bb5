import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import autocannon from 'autocannon';
import { startServer } from '../browser/fixtures/server';
import { median, medianOfRatios, printResult } from './measure';
import { sentRevision } from './page/sent-revision';

// How fast the customer's page is: requests per second of a sent revision on the production build with 8 connections,
// against an empty page of the same server (/up) and against a bare handler that reads the same rows.

const CONNECTIONS = 8;
const SECONDS = 4;
const ROUNDS = 5;

type Load = { perSecond: number; p99Ms: number };

async function load(url: string): Promise<Load> {
  const { requests, latency, errors, timeouts, non2xx } = await autocannon({
    url,
    connections: CONNECTIONS,
    duration: SECONDS,
  });
  if (errors + timeouts + non2xx > 0) throw new Error(`${url}: ${errors} errors, ${timeouts} late, ${non2xx} refused`);
  return { perSecond: requests.average, p99Ms: latency.p99 };
}

async function startBareHandler(file: string, linkId: string): Promise<{ url: string; process: ChildProcess }> {
  const child = spawn(process.execPath, ['--import', 'tsx', 'tests/bench/page/bare-handler.ts', file, linkId], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const [said] = (await once(child.stdout, 'data')) as [Buffer];
  return { url: said.toString().trim(), process: child };
}

const server = await startServer();
Object.assign(process.env, {
  DATABASE_URL: server.databaseUrl,
  FILES_DIR: server.filesDir,
  SECRETS_FILE: server.secretsFile,
  MAIL_DIR: server.mailDir,
});
const { path, linkId } = await sentRevision();
const bare = await startBareHandler(server.databaseUrl.replace(/^file:/, ''), linkId);

try {
  const p99: number[] = [];
  const proof = async () => {
    const { perSecond, p99Ms } = await load(`${server.url}${path}`);
    p99.push(p99Ms);
    return perSecond;
  };
  const rate = (url: string) => async () => (await load(url)).perSecond;
  const toEmpty = await medianOfRatios(proof, rate(`${server.url}/up`), { rounds: ROUNDS });
  const toHttp = await medianOfRatios(proof, rate(bare.url), { rounds: ROUNDS });
  printResult('page', {
    ratio_to_empty: toEmpty.ratio,
    ratio_to_http: toHttp.ratio,
    p99_ms: median(p99),
    per_second: toEmpty.subject,
    empty_per_second: toEmpty.floor,
    http_per_second: toHttp.floor,
  });
} finally {
  bare.process.kill();
  await server.remove();
}
