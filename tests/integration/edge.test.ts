import { type IncomingMessage, request, type Server, type ServerResponse } from 'node:http';
import { type AddressInfo, connect } from 'node:net';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { FORM_LIMIT_BYTES, UPLOAD_LIMIT_BYTES } from '@/lib/server/edge/body-limits';
import { gracefulStop } from '@/lib/server/edge/graceful-stop';
import { createHttpServer } from '@/lib/server/edge/http-server';
import { parseTrustedProxies } from '@/lib/server/env/trusted-proxies';

type Seen = { headers: Record<string, string>; rawNames: string[]; bytes: number };
type Answer = { status: number; headers: IncomingMessage['headers']; text: string };

let server: Server | undefined;

/** What the app behind the edge gets to see, told back as JSON. */
async function tellWhatArrived(incoming: IncomingMessage, response: ServerResponse): Promise<void> {
  let bytes = 0;
  for await (const chunk of incoming) bytes += (chunk as Buffer).length;
  const rawNames = incoming.rawHeaders.filter((_, index) => index % 2 === 0).map((name) => name.toLowerCase());
  response.end(JSON.stringify({ headers: incoming.headers, rawNames, bytes }));
}

async function start(options: { trusted?: string; publicUrl?: string; handle?: typeof tellWhatArrived } = {}) {
  const trustedProxies = parseTrustedProxies(options.trusted ?? '');
  if (!trustedProxies) throw new Error(`not addresses: ${options.trusted}`);
  const started = createHttpServer({
    handle: options.handle ?? tellWhatArrived,
    trustedProxies,
    publicUrl: options.publicUrl ?? 'http://localhost:3000',
  });
  server = started;
  await new Promise<void>((resolve) => started.listen(0, '127.0.0.1', resolve));
  return (started.address() as AddressInfo).port;
}

function send(port: number, path: string, headers: Record<string, string> = {}, body?: Buffer): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const method = body ? 'POST' : 'GET';
    const outgoing = request({ host: '127.0.0.1', port, path, headers, method }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          text: Buffer.concat(chunks).toString('utf8'),
        }),
      );
    });
    outgoing.on('error', reject);
    outgoing.end(body);
  });
}

const seenIn = (answer: Answer) => JSON.parse(answer.text) as Seen;

afterEach(async () => {
  const running = server;
  server = undefined;
  running?.closeAllConnections();
  await new Promise((resolve) => (running ? running.close(resolve) : resolve(undefined)));
});

const forged = {
  'X-Forwarded-For': '203.0.113.9',
  'X-Forwarded-Host': 'elsewhere.example.org',
  'X-Forwarded-Proto': 'https',
  Forwarded: 'for=203.0.113.9',
  'X-Real-IP': '203.0.113.9',
  'X-Yokemark-Client': '203.0.113.9',
  'X-Yokemark-Anything': 'yes',
};

describe('what a request may say about itself', () => {
  it('does not change the client address, however the header is made up', async () => {
    const port = await start();
    for (const claimed of ['203.0.113.9', '127.0.0.2, 203.0.113.9', '::1', 'nonsense']) {
      const seen = seenIn(await send(port, '/', { ...forged, 'X-Forwarded-For': claimed }));
      expect(seen.headers['x-yokemark-client']).toBe('127.0.0.1');
    }
  });

  it('reaches the app without any header that only a proxy may send', async () => {
    const seen = seenIn(await send(await start(), '/', forged));
    const names = Object.keys(seen.headers);
    expect(names.filter((name) => /forwarded|x-real-ip|x-yokemark-anything/.test(name))).toEqual([]);
    expect(seen.rawNames.filter((name) => /forwarded|x-real-ip|x-yokemark-anything/.test(name))).toEqual([]);
    expect(seen.rawNames.filter((name) => name === 'x-yokemark-client')).toHaveLength(1);
  });

  it('is believed when a trusted proxy says it, but for our own headers', async () => {
    const port = await start({ trusted: '127.0.0.0/8' });
    const seen = seenIn(await send(port, '/', forged));
    expect(seen.headers).toMatchObject({
      'x-yokemark-client': '203.0.113.9',
      'x-forwarded-host': 'elsewhere.example.org',
      'x-forwarded-proto': 'https',
    });
    expect(seen.headers['x-yokemark-anything']).toBeUndefined();
  });
});

describe('the host a form is sent to', () => {
  const publicUrl = 'https://proofs.example.org';

  it('is the public one when the form comes from there, whatever a proxy calls the server', async () => {
    const port = await start({ publicUrl });
    const seen = seenIn(await send(port, '/', { Origin: publicUrl, Host: 'inner:3000' }));
    expect(seen.headers['x-forwarded-host']).toBe('proofs.example.org');
  });

  it.each(['https://proofs.example.org.evil.example.net', 'http://proofs.example.org', 'null', ''])(
    'is not when it comes from %j',
    async (origin) => {
      const port = await start({ publicUrl });
      const seen = seenIn(await send(port, '/', { Origin: origin, 'X-Forwarded-Host': 'proofs.example.org' }));
      expect(seen.headers['x-forwarded-host']).toBeUndefined();
    },
  );
});

describe('what a request may bring', () => {
  const whole = (bytes: number) => Buffer.alloc(bytes, 'y');

  it('passes a form up to its limit, and every byte of it', async () => {
    const answer = await send(await start(), '/jobs', {}, whole(FORM_LIMIT_BYTES));
    expect(seenIn(answer).bytes).toBe(FORM_LIMIT_BYTES);
  });

  it('passes a picture up to its limit, and every byte of it', async () => {
    const answer = await send(await start(), '/api/art/new', {}, whole(UPLOAD_LIMIT_BYTES));
    expect(seenIn(answer).bytes).toBe(UPLOAD_LIMIT_BYTES);
  });

  it.each([
    ['/jobs', FORM_LIMIT_BYTES + 1, '1 MB'],
    ['/proof/token/answer', UPLOAD_LIMIT_BYTES, '1 MB'],
    ['/api/articles', FORM_LIMIT_BYTES + 1, '1 MB'],
    ['/api/art/new', UPLOAD_LIMIT_BYTES + 1, '25 MB'],
  ])('refuses more than that at %s with one sentence', async (path, bytes, limit) => {
    const answer = await send(await start(), path, {}, whole(bytes));
    expect(answer).toMatchObject({ status: 413, text: `That is more than can be sent here: at most ${limit}.\n` });
  });

  it('refuses a body of undeclared length, since a cut-off one would look whole', async () => {
    const answer = await send(await start(), '/api/art/new', { 'Transfer-Encoding': 'chunked' }, whole(10));
    expect(answer.status).toBe(411);
  });

  it('refuses before it reads: a sender that only announces a large body gets its answer', async () => {
    const port = await start();
    const answer = await new Promise<string>((resolve, reject) => {
      const socket = connect(port, '127.0.0.1', () => {
        socket.write('POST /jobs HTTP/1.1\r\nHost: here\r\nContent-Length: 99999999\r\n\r\n');
      });
      socket.once('data', (data) => {
        socket.destroy();
        resolve(data.toString('utf8'));
      });
      socket.once('error', reject);
    });
    expect(answer).toMatch(/^HTTP\/1\.1 413 /);
  });
});

describe('what every answer carries', () => {
  // RFC 6797 section 7.2: the header means nothing over plain http, and must not be sent there.
  it('keeps browsers to https exactly when customers come by https', async () => {
    const plain = await send(await start(), '/');
    expect(plain.headers['strict-transport-security']).toBeUndefined();
    server?.closeAllConnections();
    server?.close();
    const secure = await send(await start({ publicUrl: 'https://proofs.example.org' }), '/');
    expect(secure.headers['strict-transport-security']).toMatch(/^max-age=\d+$/);
  });

  it('is a plain 500 without details when the app throws', async () => {
    const logged = vi.spyOn(console, 'error').mockImplementation(() => {});
    const port = await start({ handle: () => Promise.reject(new Error('the inner reason')) });
    const answer = await send(port, '/');
    expect(answer).toMatchObject({ status: 500, text: '' });
    expect(String(logged.mock.calls[0]?.[0])).toMatch(/the inner reason/);
    logged.mockRestore();
  });
});

describe('stopping', () => {
  const aMinuteMs = 60_000;

  it('lets a request under way finish, and takes no other', async () => {
    let release = () => {};
    const arrived = new Promise<void>((resolve) => {
      release = resolve;
    });
    let begun = () => {};
    const underWay = new Promise<void>((resolve) => {
      begun = resolve;
    });
    const port = await start({
      handle: async (_, response) => {
        begun();
        await arrived;
        response.end('whole');
      },
    });
    const stop = gracefulStop(server as Server, aMinuteMs);
    const answer = send(port, '/');
    await underWay;
    const stopped = stop();
    await expect(send(port, '/')).rejects.toThrow(/ECONNREFUSED/);
    release();
    expect(await answer).toMatchObject({ status: 200, text: 'whole' });
    await stopped;
  });

  it('does not wait for connections that ask for nothing', async () => {
    const port = await start();
    const stop = gracefulStop(server as Server, aMinuteMs);
    const unused = connect(port, '127.0.0.1');
    const closed = new Promise((resolve) => unused.once('close', resolve));
    await new Promise((resolve) => unused.once('connect', resolve));
    await send(port, '/');
    await stop();
    await closed;
  });

  it('does not wait for ever for a request that never ends', async () => {
    let begun = () => {};
    const underWay = new Promise<void>((resolve) => {
      begun = resolve;
    });
    const port = await start({ handle: async () => begun() });
    const stop = gracefulStop(server as Server, 50);
    const answer = send(port, '/');
    const refused = expect(answer).rejects.toThrow(/socket hang up|ECONNRESET/);
    await underWay;
    await stop();
    await refused;
  });
});
