import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reader, write } from '@/lib/server/db/database';
import { makeSetUpCode } from '@/lib/server/secrets/set-up-code';
import { prepareFirstVisit } from '@/lib/server/shop/first-visit';
import { openShop, type ShopToOpen } from '@/lib/server/shop/open-shop';
import { readShop } from '@/lib/server/shop/read-shop';
import { type FreshDatabase, freshDatabase } from './database';

let fresh: FreshDatabase;
let nextClient = 0;
let client: string;

beforeAll(async () => {
  fresh = await freshDatabase();
});
afterAll(() => fresh.remove());

function shop(over: Partial<ShopToOpen> = {}): ShopToOpen {
  nextClient += 1;
  client = `192.0.2.${nextClient}`;
  return {
    code: makeSetUpCode(),
    name: 'Otterbank Press',
    unit: 'in',
    timeZone: 'Europe/London',
    currency: 'GBP',
    phone: '',
    ownerName: 'Marit Otterbank',
    email: 'Marit@Otterbank.example.org',
    password: 'three herons and a boat',
    ...over,
  };
}

async function nothingIsMade(): Promise<void> {
  expect(await reader().shop.count()).toBe(0);
  expect(await reader().user.count()).toBe(0);
  expect(await reader().account.count()).toBe(0);
}

describe('setting up', () => {
  it('hands the terminal a new code at every start while there is no shop', async () => {
    const first = await prepareFirstVisit();
    const second = await prepareFirstVisit();
    expect([first.state, second.state]).toEqual(['setUp', 'setUp']);
    expect(first).not.toEqual(second);
    expect(await openShop(shop({ code: first.state === 'setUp' ? first.code : '' }), client)).toMatchObject({
      mistakes: { code: 'wrongCode' },
    });
  });

  it.each([
    ['no name', { name: ' ' }, { name: 'required' }],
    ['a name with a line break', { name: 'Otterbank\nPress' }, { name: 'invalid' }],
    ['a very long name', { name: 'x'.repeat(81) }, { name: 'tooLong' }],
    ['a time zone that is none', { timeZone: 'Europe/Otterbank' }, { timeZone: 'invalid' }],
    ['a currency that is none', { currency: 'XQX' }, { currency: 'invalid' }],
    ['half an address', { email: 'marit@' }, { email: 'email' }],
    ['an address that is too long to be one', { email: `${'m'.repeat(250)}@example.org` }, { email: 'tooLong' }],
    ['a short password', { password: 'boat boat' }, { password: 'tooShort' }],
    ['a common password', { password: 'qwertyuiop' }, { password: 'tooCommon' }],
    ['a password that is the shop', { password: 'OtterbankPress1' }, { password: 'aName' }],
    ['a wrong code', { code: 'AAAA-AAAA-AAAA' }, { code: 'wrongCode' }],
    [
      'nothing at all',
      { code: '', name: '', currency: '', email: '' },
      { code: 'required', name: 'required', currency: 'invalid', email: 'required' },
    ],
  ])('says what is wrong with %s, and makes nothing', async (_what, over, mistakes) => {
    expect(await openShop(shop(over), client)).toEqual({ ok: false, reason: 'mistakes', mistakes });
    await nothingIsMade();
  });

  it('refuses even the right code after five wrong ones from one client', async () => {
    const right = shop();
    const guesser = client;
    for (let guess = 0; guess < 5; guess += 1) {
      expect(await openShop({ ...right, code: 'AAAA-AAAA-AAAA' }, guesser)).toMatchObject({ reason: 'mistakes' });
    }
    expect(await openShop(right, guesser)).toEqual({ ok: false, reason: 'tooMany' });
    await nothingIsMade();
  });

  it('makes nothing when making the owner fails', async () => {
    const other = { id: 'other', name: 'Other', emailVerified: false, role: 'helper', createdAt: new Date() };
    await write((tx) => tx.user.create({ data: { ...other, email: 'marit@otterbank.example.org' } }));
    await expect(openShop(shop(), client)).resolves.toEqual({ ok: false, reason: 'ownerExists' });
    expect(await reader().shop.count()).toBe(0);
    await write((tx) => tx.user.delete({ where: { id: 'other' } }));
    await nothingIsMade();
  });

  it('makes one shop with one owner when several ask at the same moment with the right code', async () => {
    const asked = shop();
    const results = await Promise.all(Array.from({ length: 4 }, () => openShop(asked, client)));
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
    expect(results.filter((result) => !result.ok && result.reason === 'ownerExists')).toHaveLength(3);
    expect(await reader().shop.count()).toBe(1);
    const [owner, ...others] = await reader().user.findMany({ include: { accounts: true } });
    expect(others).toEqual([]);
    expect(owner).toMatchObject({ name: 'Marit Otterbank', email: 'marit@otterbank.example.org', role: 'owner' });
    expect(owner?.accounts).toHaveLength(1);
    expect(owner?.accounts[0]?.password).not.toContain('herons');
    expect(await readShop()).toMatchObject({
      name: 'Otterbank Press',
      unit: 'in',
      timeZone: 'Europe/London',
      currency: 'GBP',
      locale: 'en',
      replyEmail: 'Marit@Otterbank.example.org',
      replyPhone: null,
    });
  });

  it('is over then: the code is gone and a new one opens nothing', async () => {
    expect(existsSync(join(fresh.folder, 'secrets.json.set-up'))).toBe(false);
    expect(await prepareFirstVisit()).toEqual({ state: 'open' });
    expect(await openShop(shop(), client)).toEqual({ ok: false, reason: 'ownerExists' });
  });

  it('leaves room for one owner only, whoever writes', async () => {
    const { id } = await reader().shop.findFirstOrThrow();
    const second = { id: 'second', name: 'Second', email: 'second@example.org', emailVerified: false };
    const made = write((tx) =>
      tx.user.create({ data: { ...second, role: 'owner', ownerOf: id, createdAt: new Date() } }),
    );
    await expect(made).rejects.toMatchObject({ code: 'P2002' });
  });
});
