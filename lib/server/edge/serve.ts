import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import next from 'next';
import { closeDatabase } from '../db/database';
import { EnvironmentError, environment } from '../env/environment';
import { prepareFirstVisit } from '../shop/first-visit';
import { firstWords } from './first-words';
import { gracefulStop } from './graceful-stop';
import { createHttpServer } from './http-server';
import { closeEverything } from './on-shutdown';

type Handler = (request: IncomingMessage, response: ServerResponse) => Promise<void>;

/** How long requests under way may take to finish once the server is told to stop. */
const FINISH_MS = 10_000;

function listen(server: Server, port: number, host: string): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve());
  });
}

function listeningProblem(error: unknown): string | null {
  if (!(error instanceof Error && 'code' in error)) return null;
  const { port } = environment();
  if (error.code === 'EADDRINUSE') return `Something else already uses port ${port}. Stop it, or set PORT to another.`;
  if (error.code === 'EACCES') return `Port ${port} is not ours to use. Set PORT to one above 1023.`;
  if (error.code === 'EADDRNOTAVAIL') return 'HOST is not an address of this computer. Leave it unset, or correct it.';
  return null;
}

/** An address this computer reaches itself at when it listens on `host`. */
function reachableHost(host: string): string {
  if (host === '0.0.0.0') return '127.0.0.1';
  if (host === '::') return '[::1]';
  return host.includes(':') ? `[${host}]` : host;
}

async function serve(): Promise<void> {
  const { port, host, publicUrl, trustedProxies } = environment();
  const development = process.argv.includes('--dev');
  const app = next({ dev: development, dir: process.cwd(), hostname: host, port });
  let answerRequests: (handler: Handler) => void = () => {};
  const handler = new Promise<Handler>((resolve) => {
    answerRequests = resolve;
  });
  const server = createHttpServer({
    handle: async (request, response) => (await handler)(request, response),
    trustedProxies,
    publicUrl,
  });
  const finish = gracefulStop(server, development ? 0 : FINISH_MS);

  // Where the pages fetch from when an action leads on to another page: here, whatever a proxy calls this server.
  process.env.__NEXT_PRIVATE_ORIGIN = `http://${reachableHost(host)}:${port}`;

  // The port comes first: a second server on it must end before it makes a new set-up code.
  await listen(server, port, host);
  await app.prepare();
  const visit = await prepareFirstVisit();
  if (development) {
    const upgrade = app.getUpgradeHandler();
    server.on('upgrade', (request, socket, head) => void upgrade(request, socket, head));
  }
  answerRequests(app.getRequestHandler());

  let stopping = false;
  async function stop(): Promise<void> {
    if (stopping) return;
    stopping = true;
    await finish();
    await app.close();
    await closeEverything();
    await closeDatabase();
    process.exit(0);
  }
  process.on('SIGINT', () => void stop());
  process.on('SIGTERM', () => void stop());

  console.log(firstWords(publicUrl, visit).join('\n'));
}

try {
  await serve();
} catch (error) {
  console.error(error instanceof EnvironmentError ? error.message : (listeningProblem(error) ?? error));
  process.exit(1);
}
