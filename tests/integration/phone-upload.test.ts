import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listArt } from '@/lib/server/art/list-art';
import { openPhone, PHONE_MINUTES, type PhoneAccess, phoneLink, receiveFromPhone } from '@/lib/server/art/phone-upload';
import { phoneToken, readPhoneToken } from '@/lib/server/art/phone-upload-token';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { write } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import { linkToken } from '@/lib/server/links/link-token';
import { addLinkKey, secrets } from '@/lib/server/secrets/secrets';
import { addJob, type FreshDatabase, freshDatabase } from './database';

const now = new Date('2026-09-01T10:00:00.000Z');
const minutesOn = (minutes: number) => new Date(now.getTime() + minutes * 60_000);
const maker = { userId: 'u', role: 'owner', name: 'Marit', email: 'marit@example.org' } as unknown as MakerAccess;
const crest = readFileSync('prisma/demo/heron-crest.png');

let fresh: FreshDatabase;
let jobId: string;
let token: string;

beforeAll(async () => {
  fresh = await freshDatabase({ PUBLIC_URL: 'https://proofs.example.org' });
  jobId = await write((tx) => addJob(tx, now));
  const link = await phoneLink(maker, jobId, now);
  if (!link) throw new Error('no link for a job that is there');
  token = link.url.replace('https://proofs.example.org/phone/', '');
});
afterAll(() => fresh.remove());

async function opened(): Promise<PhoneAccess> {
  const phone = await openPhone(token, '192.0.2.1', now);
  if (!phone.ok) throw new Error(phone.reason);
  return phone.access;
}

async function* whole(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

describe('a code for the maker’s phone', () => {
  it('opens its own job for half an hour, and then says that it has run out', async () => {
    expect(await openPhone(token, '192.0.2.1', minutesOn(PHONE_MINUTES - 1))).toMatchObject({
      ok: true,
      access: { jobId, jobTitle: 'Autumn relay shirts', expiresAt: minutesOn(PHONE_MINUTES) },
    });
    expect(await openPhone(token, '192.0.2.1', minutesOn(PHONE_MINUTES))).toEqual({ ok: false, reason: 'overdue' });
  });

  it('is not made for a job that is not there, and opens none that is gone', async () => {
    const nowhere = newId();
    expect(await phoneLink(maker, nowhere, now)).toBeNull();
    const gone = phoneToken({ jobId: nowhere, expiresAt: minutesOn(5) });
    expect(await openPhone(gone, '192.0.2.1', now)).toEqual({ ok: false, reason: 'wrong' });
  });

  it('opens in one spelling only, and with no bit changed', () => {
    fc.assert(
      fc.property(fc.nat({ max: token.length - 1 }), fc.constantFrom(...'ABCXYZabcxyz0189-_'), (at, letter) => {
        const changed = token.slice(0, at) + letter + token.slice(at + 1);
        if (changed !== token) expect(readPhoneToken(changed)).toBeNull();
      }),
    );
    fc.assert(fc.property(fc.string(), (text) => readPhoneToken(text) === null));
    expect(readPhoneToken(linkToken({ id: jobId, generation: 1, keyVersion: 1 }))).toBeNull();
  });

  it('stays good when the shop takes a new key', () => {
    const before = secrets().linkKeys.length;
    addLinkKey();
    expect(secrets().linkKeys.length).toBe(before + 1);
    expect(readPhoneToken(token)).toMatchObject({ jobId });
  });

  it('takes pictures in for that job, up to a number', async () => {
    const upload = () => ({ name: 'crest.png', declaredLength: crest.length, body: whole(crest) });
    expect(await receiveFromPhone(await opened(), upload(), now)).toMatchObject({
      ok: true,
      art: { name: 'crest.png' },
    });
    expect((await listArt(jobId)).map(({ name }) => name)).toEqual(['crest.png']);
    const access = await opened();
    const nothing = { name: '', declaredLength: 0, body: whole(new Uint8Array()) };
    const reasons = new Set<string>();
    for (let count = 0; count < 60; count += 1) {
      const received = await receiveFromPhone(access, { ...nothing, body: whole(new Uint8Array()) }, now);
      if (!received.ok) reasons.add(received.reason);
    }
    expect([...reasons]).toEqual(['empty', 'tooManyPictures']);
  });

  it('is guessed at a few times only', async () => {
    const guess = () => openPhone('x'.repeat(52), '198.51.100.9', now);
    const answers = new Set<string>();
    for (let count = 0; count < 25; count += 1) {
      const phone = await guess();
      answers.add(phone.ok ? 'ok' : phone.reason);
    }
    expect([...answers]).toEqual(['wrong', 'tooManyWrong']);
    expect((await openPhone(token, '198.51.100.9', now)).ok).toBe(true);
  });
});
