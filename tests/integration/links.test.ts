import { createHmac } from 'node:crypto';
import { readFileSync } from 'node:fs';
import Sqlite from 'better-sqlite3';
import fc from 'fast-check';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { write } from '@/lib/server/db/database';
import { sqlitePath } from '@/lib/server/db/database-url';
import { newId } from '@/lib/server/db/new-id';
import { linkToken, readToken } from '@/lib/server/links/link-token';
import { issueLink, type Link, linkUrl, liveLinks, openLink, renewLink, revokeLink } from '@/lib/server/links/links';
import { addLinkKey, secrets } from '@/lib/server/secrets/secrets';
import { addContact, addJob, type FreshDatabase, freshDatabase } from './database';

const now = new Date('2026-09-01T10:00:00.000Z');
const later = new Date('2027-03-01T10:00:00.000Z');
const may = { sign: true, remark: true, seeNames: false };

let fresh: FreshDatabase | undefined;
let jobId: string;
let contactId: string;
let link: Link;

beforeEach(async () => {
  fresh ??= await freshDatabase({ PUBLIC_URL: 'https://proofs.example.org' });
  await write(async (tx) => {
    jobId = await addJob(tx, now);
    contactId = await addContact(tx, jobId, now);
    link = await issueLink(tx, { contactId, may, expiresAt: later }, now);
  });
});
afterAll(() => fresh?.remove());

const open = (token: string, at = now) => openLink(token, at);

describe('a link', () => {
  it('opens for the one it was made for, with what they may do', async () => {
    expect(await open(linkToken(link))).toEqual({
      linkId: link.id,
      contactId,
      contactName: 'Wren Abara',
      jobId,
      may,
      mustSign: [contactId],
    });
  });

  it('names everybody who must sign, and nobody else', async () => {
    const other = await write(async (tx) => {
      const second = await addContact(tx, jobId, new Date(now.getTime() + 1));
      const looker = await addContact(tx, jobId, now);
      await tx.contact.update({ where: { id: looker }, data: { mustSign: false } });
      return second;
    });
    expect((await open(linkToken(link)))?.mustSign).toEqual([contactId, other]);
  });

  it('starts where customers find the shop', () => {
    expect(linkUrl(link)).toMatch(/^https:\/\/proofs\.example\.org\/proof\/[A-Za-z0-9_-]{48}$/);
  });

  it('carries 128 bits of HMAC-SHA-256 (RFC 2104) over its id, generation and key version', () => {
    const bytes = Buffer.from(linkToken(link), 'base64url');
    const id = Buffer.from(link.id.replaceAll('-', ''), 'hex');
    expect(bytes.subarray(0, 20)).toEqual(Buffer.concat([id, Buffer.from([0, 0, 1, 1])]));
    const mac = createHmac('sha256', secrets().linkKeys[0].key)
      .update(Buffer.concat([Buffer.from('yokemark link 1'), bytes.subarray(0, 20)]))
      .digest();
    expect(bytes.subarray(20)).toEqual(mac.subarray(0, 16));
  });

  it('does not open with any one character changed, nor with anything else', async () => {
    const token = linkToken(link);
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
    for (const [at, letter] of [...token].entries()) {
      const other = letters[(letters.indexOf(letter) + 1) % 64];
      expect(await open(`${token.slice(0, at)}${other}${token.slice(at + 1)}`)).toBeNull();
    }
    const others = ['', token.slice(1), `${token}A`, ` ${token}`, `${token}=`, token.toUpperCase(), '../../etc/passwd'];
    for (const other of others) expect(await open(other)).toBeNull();
  });

  it('is not stored: the database alone opens nothing', () => {
    const file = new Sqlite(sqlitePath(fresh?.url ?? ''));
    file.pragma('wal_checkpoint(TRUNCATE)');
    file.close();
    const bytes = readFileSync(sqlitePath(fresh?.url ?? ''));
    const mac = Buffer.from(linkToken(link), 'base64url').subarray(20);
    expect(bytes.includes(linkToken(link))).toBe(false);
    expect(bytes.includes(mac)).toBe(false);
    expect(bytes.includes(Buffer.from(secrets().linkKeys[0].key))).toBe(false);
    expect(bytes.includes(link.id)).toBe(true);
  });

  it('answers a wrong, expired, revoked and renewed token all alike', async () => {
    const token = linkToken(link);
    expect(await open(token, later)).toBeNull();
    await write((tx) => revokeLink(tx, link.id, now));
    expect(await open(token)).toBeNull();

    const renewed = await write((tx) => renewLink(tx, link.id, later));
    expect(await open(token)).toBeNull();
    expect((await open(linkToken(renewed)))?.linkId).toBe(link.id);

    const never = { id: newId(), generation: 1, keyVersion: 1 };
    expect(readToken(linkToken(never))?.genuine).toBe(true);
    expect(await open(linkToken(never))).toBeNull();
  });

  it('stays the same one for a person, and lasts for the longest it was given for', async () => {
    const sooner = new Date('2026-10-01T10:00:00.000Z');
    const again = await write((tx) =>
      issueLink(tx, { contactId, may: { ...may, sign: false }, expiresAt: sooner }, now),
    );
    expect(linkToken(again)).toBe(linkToken(link));
    expect(again.expiresAt).toEqual(later);
    expect((await open(linkToken(link)))?.may.sign).toBe(false);
    expect((await liveLinks(jobId, now)).get(contactId)?.id).toBe(link.id);

    await write((tx) => revokeLink(tx, link.id, now));
    expect((await liveLinks(jobId, now)).size).toBe(0);
    const fresh = await write((tx) => issueLink(tx, { contactId, may, expiresAt: later }, now));
    expect(fresh.id).not.toBe(link.id);
    expect((await liveLinks(jobId, now)).get(contactId)?.id).toBe(fresh.id);
  });

  it('made with an older key still opens, and a renewed one uses the newest', async () => {
    const token = linkToken(link);
    const { version } = addLinkKey();
    expect((await open(token))?.linkId).toBe(link.id);
    const renewed = await write((tx) => renewLink(tx, link.id, later));
    expect(renewed.keyVersion).toBe(version);
    expect((await open(linkToken(renewed)))?.linkId).toBe(link.id);
    expect(await open(token)).toBeNull();
  });

  it('reads back from its token for every id, generation and key', () => {
    const { linkKeys } = secrets();
    fc.assert(
      fc.property(fc.uuid({ version: 7 }), fc.integer({ min: 1, max: 0xff_ff_ff }), (id, generation) => {
        const claim = { id, generation, keyVersion: linkKeys[0].version };
        expect(readToken(linkToken(claim))).toEqual({ claim, genuine: true });
      }),
      { numRuns: 50 },
    );
  });
});
