import { request as httpRequest } from 'node:http';
import { expect, test } from '@playwright/test';
import { type RunningServer, startServer } from './fixtures/server';

// A page's form is sent as a browser without JavaScript sends it, through a proxy that calls the server by another name.
const publicUrl = 'https://proofs.example.org';

let server: RunningServer;
test.beforeAll(async () => {
  server = await startServer({ variables: { PUBLIC_URL: publicUrl } });
});
test.afterAll(() => server.remove());

type Answer = { status: number; text: string };

function send(path: string, headers: Record<string, string>, body?: string): Promise<Answer> {
  const method = body === undefined ? 'GET' : 'POST';
  const { port } = new URL(server.url);
  return new Promise((resolve, reject) => {
    const outgoing = httpRequest({ host: '127.0.0.1', port, path, headers, method }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (chunk: string) => {
        text += chunk;
      });
      response.on('end', () => resolve({ status: response.statusCode ?? 0, text }));
    });
    outgoing.on('error', reject);
    outgoing.end(body);
  });
}

function unescaped(text: string): string {
  return text.replaceAll('&quot;', '"').replaceAll('&amp;', '&');
}

async function sendSetUpForm(origin: string): Promise<Answer> {
  const page = await send('/set-up', { Host: 'inner:3000' });
  const form = new FormData();
  for (const [input] of page.text.matchAll(/<input type="hidden"[^>]*>/g)) {
    const name = /name="([^"]*)"/.exec(input)?.[1];
    if (name) form.set(unescaped(name), unescaped(/value="([^"]*)"/.exec(input)?.[1] ?? ''));
  }
  form.set('name', 'Otterbank Press');
  const encoded = new Response(form);
  const body = await encoded.text();
  const headers = {
    Host: 'inner:3000',
    Origin: origin,
    'Content-Type': encoded.headers.get('content-type') ?? '',
    'Content-Length': String(Buffer.byteLength(body)),
  };
  return send('/set-up', headers, body);
}

test('a form from the public address is taken in behind a proxy', async () => {
  const answer = await sendSetUpForm(publicUrl);
  expect(answer.status).toBe(200);
  // Refused for what it lacks, and what was typed is there again.
  expect(answer.text).toContain('value="Otterbank Press"');
});

test('a form from anywhere else is refused', async () => {
  for (const origin of ['https://elsewhere.example.net', 'http://proofs.example.org', 'https://inner:3001']) {
    const answer = await sendSetUpForm(origin);
    expect([origin, answer.status]).toEqual([origin, 500]);
    expect(answer.text).not.toContain('value="Otterbank Press"');
  }
});
