import { readdirSync, readFileSync } from 'node:fs';
import { request as httpRequest } from 'node:http';
import { join } from 'node:path';
import sharp from 'sharp';
import { type Maker, openShopApart } from './fixtures/apart';
import type { RunningServer } from './fixtures/server';
import { expect, test } from './fixtures/shop';

const MEBIBYTE = 1_048_576;
const crest = readFileSync('prisma/demo/heron-crest.png');
const clubPicture = readFileSync('prisma/demo/heron-crest-on-white.jpg');

let maker: Maker;

test.beforeAll(({ shop }) => {
  maker = openShopApart(shop);
});

function upload(shop: RunningServer, body: Uint8Array, headers: Record<string, string> = {}, job = maker.jobId) {
  return fetch(`${shop.url}/api/art/upload?${new URLSearchParams({ job, name: 'crest.png' })}`, {
    method: 'POST',
    body: new Uint8Array(body),
    headers: { cookie: maker.cookie, ...headers },
  });
}

/** Sends fewer bytes than were announced, and goes away. */
function brokenOff(shop: RunningServer, body: Uint8Array): Promise<string> {
  const address = `${shop.url}/api/art/upload?job=${maker.jobId}&name=crest.png`;
  const headers = { cookie: maker.cookie, 'content-length': String(body.length) };
  return new Promise((resolve) => {
    const sending = httpRequest(address, { method: 'POST', headers });
    sending.once('error', () => resolve('gone'));
    sending.once('response', (response) => resolve(String(response.statusCode)));
    sending.write(body.subarray(0, Math.floor(body.length / 2)), () => sending.destroy());
  });
}

function kept(shop: RunningServer): string[] {
  return readdirSync(shop.filesDir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`);
}

test.describe('taking in art over the wire', () => {
  test('answers with the picture, and shows a small one to whoever is signed in', async ({ shop }) => {
    const response = await upload(shop, crest);
    expect(response.status).toBe(200);
    const { ok, art } = (await response.json()) as { ok: boolean; art: { ref: { sha256: string } } };
    expect(ok).toBe(true);
    const small = `${shop.url}/api/art/${art.ref.sha256}/proxy.webp`;
    const shown = await fetch(small, { headers: { cookie: maker.cookie } });
    expect(shown.headers.get('content-type')).toBe('image/webp');
    expect(shown.headers.get('cache-control')).toContain('private');
    expect((await sharp(Buffer.from(await shown.arrayBuffer())).metadata()).height).toBe(1_500);
    expect((await fetch(small)).status).toBe(401);
    const unknown = await fetch(small.replace(art.ref.sha256, 'f'.repeat(64)), { headers: { cookie: maker.cookie } });
    expect(unknown.status).toBe(404);
  });

  test('takes the largest file there may be, whole', async ({ shop }) => {
    // A JPEG padded behind its end, as a camera pads: the file is as long as may be and its picture is sound.
    const largest = Buffer.concat([clubPicture, Buffer.alloc(25 * MEBIBYTE - clubPicture.length, 7)]);
    const response = await upload(shop, largest);
    expect(await response.json()).toMatchObject({ ok: true, art: { bytes: 25 * MEBIBYTE, notes: ['noTransparency'] } });
  });

  test('refuses what is no picture, and leaves nothing behind', async ({ shop }) => {
    const before = kept(shop);
    const text = await upload(shop, Buffer.from('Dear printer, see attached.'));
    expect([text.status, await text.json()]).toEqual([422, { ok: false, reason: 'notAPicture' }]);
    const nowhere = await upload(shop, crest, {}, 'no-such-job');
    expect([nowhere.status, await nowhere.json()]).toEqual([422, { ok: false, reason: 'noJob' }]);
    const tooLarge = await upload(shop, Buffer.alloc(25 * MEBIBYTE + 1));
    expect(tooLarge.status).toBe(413);
    expect(kept(shop)).toEqual(before);
  });

  test('refuses strangers and other sites', async ({ shop }) => {
    expect((await upload(shop, crest, { cookie: '' })).status).toBe(401);
    expect((await upload(shop, crest, { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
  });

  test('keeps nothing of an upload that broke off', async ({ shop }) => {
    expect(await brokenOff(shop, clubPicture)).toBe('gone');
    // The server has this one after it, so by then it has met the end of the other.
    expect((await upload(shop, crest)).status).toBe(200);
    await expect.poll(() => readdirSync(join(shop.filesDir, 'incoming'))).toEqual([]);
  });
});
