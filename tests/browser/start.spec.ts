import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { type AddressInfo, connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { startServer } from './fixtures/server';

/** Runs a part of the start to its end and tells what it said. */
function runBuilt(part: 'prepare' | 'serve', variables: Record<string, string>) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`.built/${part}.mjs`], {
    env: { ...process.env, NODE_ENV: 'production', ...variables },
    encoding: 'utf8',
  });
  return { status, said: `${stdout}${stderr}` };
}

test.describe('the server', () => {
  test('ends cleanly when told to, with its work done and its connections closed', async () => {
    const server = await startServer();
    const idle = connect(Number(new URL(server.url).port), '127.0.0.1');
    await new Promise((resolve) => idle.once('connect', resolve));
    const closed = new Promise((resolve) => idle.once('close', resolve));
    expect(await server.stop()).toBe(0);
    await closed;
    // A write-ahead log left behind would mean that the database was not closed.
    expect(existsSync(`${server.folder}/yokemark.db-wal`)).toBe(false);
    rmSync(server.folder, { recursive: true });
  });

  test('starts again on what it left', async () => {
    const first = await startServer();
    expect(await first.stop()).toBe(0);
    const second = await startServer({ folder: first.folder });
    expect((await fetch(`${second.url}/icon.svg`)).status).toBe(200);
    await second.remove();
  });

  test('says in one sentence that its port is taken', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await new Promise((resolve) => other.once('listening', resolve));
    const { port } = other.address() as AddressInfo;
    const folder = mkdtempSync(join(tmpdir(), 'yokemark-second-'));
    const SECRETS_FILE = join(folder, 'secrets.json');
    const DATABASE_URL = `file:${join(folder, 'yokemark.db')}`;
    const { status, said } = runBuilt('serve', { PORT: String(port), HOST: '127.0.0.1', SECRETS_FILE, DATABASE_URL });
    expect(status).toBe(1);
    // A new set-up code would have put the one of the server that has the port out of use.
    expect(readdirSync(folder)).toEqual([]);
    rmSync(folder, { recursive: true });
    expect(said).toContain(`Something else already uses port ${port}. Stop it, or set PORT to another.\n`);
    other.close();
  });

  for (const part of ['prepare', 'serve'] as const) {
    test(`says what is wrong with a variable before it does anything: ${part}`, () => {
      const { status, said } = runBuilt(part, { PORT: 'http', DATABASE_URL: 'mysql://here' });
      expect(status).toBe(1);
      expect(said.trim().split('\n')).toEqual([
        expect.stringMatching(/^PORT must be .*\.$/),
        expect.stringMatching(/^DATABASE_URL must .*\.$/),
      ]);
    });
  }
});
