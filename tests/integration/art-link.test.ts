import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { artLinkOf, endArtLink, makeArtLink } from '@/lib/server/art/art-link';
import { customerPictures, MOST_CUSTOMER_PICTURES, receiveFromCustomer } from '@/lib/server/art/customer-art';
import { listArt } from '@/lib/server/art/list-art';
import { loadArtPage } from '@/lib/server/art/load-art-page';
import { receiveArt } from '@/lib/server/art/receive-art';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { write } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import type { LinkAccess } from '@/lib/server/links/link-access';
import { issueLink, linkUrl, liveLinks, openLink } from '@/lib/server/links/links';
import { appendRecord } from '@/lib/server/record/append';
import { verifyRecord } from '@/lib/server/record/verify';
import { addContact, addJob, type FreshDatabase, freshDatabase } from './database';

const now = new Date('2026-09-01T10:00:00.000Z');
const daysOn = (days: number) => new Date(now.getTime() + days * 86_400_000);
const maker = { userId: 'u', role: 'owner', name: 'Marit', email: 'marit@example.org' } as unknown as MakerAccess;
const crest = readFileSync('prisma/demo/heron-crest-small.png');
const sketch = readFileSync('tests/data/formats/patch.webp');

let fresh: FreshDatabase;
let jobId: string;
let contactId: string;

beforeAll(async () => {
  fresh = await freshDatabase({ PUBLIC_URL: 'https://proofs.example.org' });
  await write(async (tx) => {
    jobId = await addJob(tx, now);
    contactId = await addContact(tx, jobId, now);
  });
});
afterAll(() => fresh.remove());

async function token(): Promise<string> {
  const link = await artLinkOf(maker, jobId, now);
  const [, found = ''] = /^https:\/\/proofs\.example\.org\/art\/([A-Za-z0-9_-]{48})$/.exec(link?.url ?? '') ?? [];
  return found;
}

async function opened(): Promise<LinkAccess> {
  const access = await openLink(await token(), now, 'art');
  if (!access) throw new Error('an art link does not open');
  return access;
}

async function* whole(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

const upload = (bytes: Uint8Array, name: string) => ({ name, declaredLength: bytes.length, body: whole(bytes) });

describe('a link to hand in art', () => {
  it('is made once, lasts, and opens its own page and no proof sheet', async () => {
    expect(await artLinkOf(maker, jobId, now)).toBeNull();
    expect(await makeArtLink(maker, jobId, now)).toEqual({ ok: true });
    const first = await token();
    await makeArtLink(maker, jobId, now);
    expect(await token()).toBe(first);
    expect(await openLink(first, daysOn(29), 'art')).toMatchObject({
      jobId,
      contactId,
      may: { upload: true, sign: false },
    });
    expect(await openLink(first, now)).toBeNull();
    expect(await makeArtLink(maker, newId(), now)).toEqual({ ok: false, reason: 'noJob' });
  });

  it('and the link to sign with stand beside each other', async () => {
    const may = { sign: true, remark: true, seeNames: true };
    const before = await token();
    const signing = await write((tx) => issueLink(tx, { contactId, may, expiresAt: daysOn(60) }, now));
    const proof = linkUrl(signing).split('/').at(-1) ?? '';
    expect(await openLink(proof, now)).toMatchObject({ may });
    expect(await openLink(proof, now, 'art')).toBeNull();
    expect(await token()).toBe(before);
    expect([...(await liveLinks(jobId, now)).values()].map(({ id }) => id)).toEqual([signing.id]);
  });

  it('takes pictures, measures them, and shows what came through it and nothing else', async () => {
    const access = await opened();
    await receiveArt({ jobId, ...upload(sketch, 'ours.webp') });
    const received = await receiveFromCustomer(access, upload(crest, 'crest.png'), now);
    expect(received).toMatchObject({ ok: true, art: { name: 'crest.png' } });
    await receiveFromCustomer(access, upload(crest, 'again.png'), now);
    expect((await listArt(jobId)).map(({ name }) => name).sort()).toEqual(['crest.png', 'ours.webp']);
    const [only, ...others] = await customerPictures(access);
    expect(others).toEqual([]);
    expect(only?.facts).toMatchObject({ widthPx: only?.ref.widthPx });
    expect(await loadArtPage(access)).toMatchObject({ job: { title: 'Autumn relay shirts' }, widthUm: 254_000 });
    expect(await receiveFromCustomer(access, upload(Buffer.from('hello'), 'a.txt'), now)).toEqual({
      ok: false,
      reason: 'notAPicture',
    });
  });

  it('is dead once it is taken back, and the next one is another', async () => {
    const before = await token();
    await endArtLink(maker, jobId, now);
    expect(await openLink(before, now, 'art')).toBeNull();
    expect(await artLinkOf(maker, jobId, now)).toBeNull();
    await makeArtLink(maker, jobId, now);
    expect(await token()).not.toBe(before);
    expect(await customerPictures(await opened())).toHaveLength(1);
    expect(await verifyRecord(jobId)).toMatchObject({ ok: true });
  });

  it('keeps nothing of a picture when whoever sends it stops while it is read', async () => {
    const bytes = readFileSync('prisma/demo/heron-crest.png');
    const stopping = new AbortController();
    async function* thenStop(): AsyncGenerator<Uint8Array> {
      yield bytes;
      stopping.abort();
    }
    const sending = { name: 'a.png', declaredLength: bytes.length, body: thenStop(), signal: stopping.signal };
    const before = await listArt(jobId);
    expect(await receiveFromCustomer(await opened(), sending, now)).toEqual({ ok: false, reason: 'cutShort' });
    expect(await listArt(jobId)).toEqual(before);
  });

  it('takes no more than so many for a job', async () => {
    const access = await opened();
    for (let count = 1; count < MOST_CUSTOMER_PICTURES; count += 1) {
      const came = { art: newId(), link: access.linkId };
      await write((tx) => appendRecord(tx, jobId, 'artFromCustomer', came, now));
    }
    const other = readFileSync('tests/data/formats/patch.tif');
    expect(await receiveFromCustomer(access, upload(other, 'b.tif'), now)).toEqual({
      ok: false,
      reason: 'tooManyPictures',
    });
  });
});
