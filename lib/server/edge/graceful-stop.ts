import type { Server, ServerResponse } from 'node:http';

/**
 * Prepares a server to be stopped: call it before the first request. The function it answers with takes no further
 * requests, lets those under way finish for at most `finishMs`, and closes every connection, also those that browsers
 * opened ahead and never used.
 */
export function gracefulStop(server: Server, finishMs: number): () => Promise<void> {
  const underWay = new Set<ServerResponse>();
  let afterLast: (() => void) | undefined;

  server.on('request', (_, response: ServerResponse) => {
    underWay.add(response);
    response.once('close', () => {
      underWay.delete(response);
      if (underWay.size === 0) afterLast?.();
    });
  });

  return async () => {
    const closed = new Promise<void>((resolve) => server.close(() => resolve()));
    if (underWay.size > 0) {
      await new Promise<void>((resolve) => {
        const impatience = setTimeout(resolve, finishMs);
        afterLast = () => {
          clearTimeout(impatience);
          resolve();
        };
      });
    }
    server.closeAllConnections();
    await closed;
  };
}
