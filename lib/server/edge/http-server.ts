import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { TrustedProxies } from '../env/trusted-proxies';
import { type BodyRefusal, refusedBody } from './body-limits';
import { trustHeaders } from './request-headers';

type HttpServerOptions = {
  handle: (request: IncomingMessage, response: ServerResponse) => Promise<void> | void;
  trustedProxies: TrustedProxies;
  /** Origin customers reach the shop at; when it is https, browsers are told to keep to it. */
  publicUrl: string;
};

/** How long a refused body is still read and thrown away, so that the sender gets to see the answer. */
const DRAIN_MS = 5_000;

/** The longest a request may take to arrive: 25 MB over a slow telephone line. */
const REQUEST_MS = 300_000;
const HEADERS_MS = 20_000;
/** Longer than the minute for which proxies commonly keep a connection, so that theirs ends first. */
const KEEP_ALIVE_MS = 65_000;

function refuse(request: IncomingMessage, response: ServerResponse, refusal: BodyRefusal): void {
  // Not with Connection: close: Node would then hang up as soon as it has answered, and whoever is still sending sees that
  // instead of the answer.
  response.writeHead(refusal.status, {
    'Content-Type': 'text/plain; charset=utf-8',
    'Cache-Control': 'no-store',
    'X-Content-Type-Options': 'nosniff',
  });
  response.end(`${refusal.sentence}\n`);
  request.resume();
  const timer = setTimeout(() => request.destroy(), DRAIN_MS);
  timer.unref();
  request.once('close', () => clearTimeout(timer));
}

/**
 * The server that stands in front of the pages: it decides what a request may say about itself and how much it may
 * bring, and passes it on.
 */
export function createHttpServer({ handle, trustedProxies, publicUrl }: HttpServerOptions): Server {
  const isSecure = publicUrl.startsWith('https:');
  const server = createServer(async (request, response) => {
    trustHeaders(request, { trustedProxies, publicUrl });
    if (isSecure) response.setHeader('Strict-Transport-Security', 'max-age=31536000');
    const refusal = refusedBody(request);
    if (refusal) {
      refuse(request, response, refusal);
      return;
    }
    try {
      await handle(request, response);
    } catch (error) {
      console.error(error);
      if (!response.headersSent) response.writeHead(500, { 'Content-Type': 'text/plain; charset=utf-8' });
      response.end();
    }
  });
  server.headersTimeout = HEADERS_MS;
  server.requestTimeout = REQUEST_MS;
  server.keepAliveTimeout = KEEP_ALIVE_MS;
  return server;
}
