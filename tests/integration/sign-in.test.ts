import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { resetPassword } from '@/lib/server/auth/reset-password';
import { type CookieToSet, type SignIn, signIn, signOut } from '@/lib/server/auth/sign-in';
import { auth } from '@/lib/server/auth/sign-in-library';
import { closeDatabase, reader, write } from '@/lib/server/db/database';
import { makeSetUpCode } from '@/lib/server/secrets/set-up-code';
import { openShop } from '@/lib/server/shop/open-shop';
import { type FreshDatabase, freshDatabase } from './database';

const email = 'marit@example.org';
const password = 'three herons and a boat';
let fresh: FreshDatabase;
let nextClient = 0;
let client: string;

beforeAll(async () => {
  fresh = await freshDatabase({ PUBLIC_URL: 'https://proofs.example.org' });
  const opened = await openShop(
    {
      code: makeSetUpCode(),
      name: 'Otterbank Press',
      unit: 'cm',
      timeZone: 'Europe/London',
      currency: 'GBP',
      phone: '',
      ownerName: 'Marit Otterbank',
      email,
      password,
    },
    '192.0.2.1',
  );
  expect(opened.ok).toBe(true);
});
afterAll(() => fresh.remove());
beforeEach(() => {
  nextClient += 1;
  client = `198.51.100.${nextClient}`;
});

function from(address: string, cookies: readonly CookieToSet[] = []): Headers {
  const headers = new Headers({ 'x-yokemark-client': address });
  if (cookies.length > 0) {
    headers.set('cookie', cookies.map(({ name, value }) => `${name}=${encodeURIComponent(value)}`).join('; '));
  }
  return headers;
}

function cookiesOf(result: SignIn): CookieToSet[] {
  if (!result.ok) throw new Error(`Not signed in: ${result.reason}`);
  return result.cookies;
}

async function signedIn(): Promise<Headers> {
  return from(client, cookiesOf(await signIn({ email, password }, from(client))));
}

describe('signing in', () => {
  it('gives a session that names the maker', async () => {
    const maker = await makerFromHeaders(await signedIn());
    expect(maker).toMatchObject({ role: 'owner', name: 'Marit Otterbank', email });
    expect(maker?.userId).toBe((await reader().user.findFirstOrThrow()).id);
  });

  it('sets a cookie that scripts cannot read, other sites cannot send and plain http does not carry', async () => {
    const cookies = cookiesOf(await signIn({ email: ' MARIT@example.org ', password }, from(client)));
    expect(cookies).toHaveLength(1);
    const [cookie] = cookies;
    // The __Secure- prefix: RFC 6265bis, section 4.1.3.1.
    expect(cookie?.name).toMatch(/^__Secure-yokemark\./);
    expect(cookie?.options).toEqual({
      httpOnly: true,
      secure: true,
      sameSite: 'lax',
      path: '/',
      maxAge: 30 * 24 * 3600,
    });
  });

  it.each([
    ['a wrong password', { email, password: 'three herons and a boot' }],
    ['an unknown address', { email: 'nobody@example.org', password }],
    ['half an address', { email: 'marit', password }],
    ['a password longer than any', { email, password: 'x'.repeat(5000) }],
    ['nothing', { email: '', password: '' }],
  ])('is refused alike for %s', async (_what, input) => {
    expect(await signIn(input, from(client))).toEqual({ ok: false, reason: 'wrong' });
  });

  it('is refused for a minute after five tries from one client, and counts in the database', async () => {
    const wrong = () => signIn({ email, password: 'wrong wrong wrong' }, from(client));
    for (let attempt = 0; attempt < 5; attempt += 1) expect(await wrong()).toMatchObject({ reason: 'wrong' });
    const refused = await signIn({ email, password }, from(client));
    expect(refused).toMatchObject({ ok: false, reason: 'tooMany' });
    expect(refused.ok || refused.reason !== 'tooMany' || refused.waitSeconds <= 60).toBe(true);
    const rows = await reader().rateLimit.findMany({ where: { key: { contains: client } } });
    expect(rows.map(({ count }) => count)).toEqual([5]);

    const elsewhere = await signIn({ email, password }, from('203.0.113.77'));
    expect(elsewhere.ok).toBe(true);
    await closeDatabase();
    expect(await signIn({ email, password }, from(client))).toMatchObject({ reason: 'tooMany' });
  });

  it('does not let a made-up forwarding header start the count anew', async () => {
    for (let attempt = 0; attempt < 5; attempt += 1) {
      const headers = from(client);
      headers.set('x-forwarded-for', `203.0.113.${attempt}`);
      await signIn({ email, password: 'wrong wrong wrong' }, headers);
    }
    const headers = from(client);
    headers.set('x-forwarded-for', '203.0.113.200');
    expect(await signIn({ email, password }, headers)).toMatchObject({ reason: 'tooMany' });
  });

  it('refuses an account after a hundred wrong passwords in a day from anywhere', async () => {
    const someone = 'many@example.org';
    // Longer than any password may be, so that it is refused without the slow hash.
    const wrong = { email: someone, password: 'x'.repeat(500) };
    for (let attempt = 0; attempt < 100; attempt += 1) {
      expect(await signIn(wrong, from(`192.0.2.${attempt + 100}`))).toMatchObject({ reason: 'wrong' });
    }
    expect(await signIn(wrong, from('203.0.113.5'))).toMatchObject({ reason: 'tooMany' });
    expect((await signIn({ email, password }, from(client))).ok).toBe(true);
  });
});

describe('a session', () => {
  it('is refused when the cookie is changed or made up', async () => {
    const [cookie] = cookiesOf(await signIn({ email, password }, from(client)));
    if (!cookie) throw new Error('no cookie');
    const [token = '', signature = ''] = cookie.value.split('.');
    for (const value of ['', token, `${token}.`, `${token}x.${signature}`, `${token}.${signature.slice(1)}`]) {
      expect(await makerFromHeaders(from(client, [{ ...cookie, value }]))).toBeNull();
    }
    expect(await makerFromHeaders(new Headers())).toBeNull();
    expect(await makerFromHeaders(from(client, [cookie]))).not.toBeNull();
  });

  it('ends on the server when the maker signs out', async () => {
    const headers = await signedIn();
    const cookies = await signOut(headers);
    expect(cookies.map(({ options }) => options.maxAge)).toContain(0);
    expect(await makerFromHeaders(headers)).toBeNull();
  });

  it('ends after its time, and looking at it writes nothing', async () => {
    const headers = await signedIn();
    const before = await reader().session.findMany({ orderBy: { id: 'asc' } });
    expect(await makerFromHeaders(headers)).not.toBeNull();
    expect(await reader().session.findMany({ orderBy: { id: 'asc' } })).toEqual(before);
    await write((tx) => tx.session.updateMany({ data: { expiresAt: new Date(Date.now() - 1000) } }));
    expect(await makerFromHeaders(headers)).toBeNull();
  });
});

describe('strangers', () => {
  it('cannot sign up, neither over HTTP nor by a call', async () => {
    const body = { name: 'Stranger', email: 'stranger@example.org', password: 'four very secret herons' };
    const request = new Request('https://proofs.example.org/api/auth/sign-up/email', {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: 'https://proofs.example.org' },
      body: JSON.stringify(body),
    });
    expect((await auth().handler(request)).ok).toBe(false);
    await expect(auth().api.signUpEmail({ body: { ...body, role: 'owner' } as never })).rejects.toThrow();
    expect(await reader().user.count()).toBe(1);
  });
});

describe('resetting a password', () => {
  const command = join('lib', 'server', 'commands', 'reset-password.ts');
  const run = (...args: string[]) => promisify(execFile)(process.execPath, ['--import', 'tsx', command, ...args]);

  it('takes the new one, refuses the old one and ends every session', async () => {
    const headers = await signedIn();
    expect(await resetPassword(' Marit@Example.org', 'seven otters on a raft')).toEqual({ ok: true });
    expect(await makerFromHeaders(headers)).toBeNull();
    expect(await signIn({ email, password }, from(client))).toEqual({ ok: false, reason: 'wrong' });
    expect((await signIn({ email, password: 'seven otters on a raft' }, from(client))).ok).toBe(true);
  });

  it.each([
    ['an unknown maker', 'nobody@example.org', 'seven otters on a raft', 'noSuchMaker'],
    ['a short one', email, 'otter', 'tooShort'],
    ['a common one', email, 'password123', 'tooCommon'],
    ['the shop', email, 'otterbank press', 'aName'],
  ])('refuses %s and changes nothing', async (_what, whose, chosen, reason) => {
    const before = await reader().account.findMany();
    expect(await resetPassword(whose, chosen)).toEqual({ ok: false, reason });
    expect(await reader().account.findMany()).toEqual(before);
  });

  it('has a command that makes one up where nobody can be asked', async () => {
    const { stdout } = await run();
    const made = /The new password for marit@example\.org is (\S+)/.exec(stdout)?.[1] ?? '';
    expect(made).toMatch(/^[a-z2-9]{5}(-[a-z2-9]{5}){3}$/);
    expect((await signIn({ email, password: made }, from(client))).ok).toBe(true);
    await expect(run('nobody@example.org')).rejects.toMatchObject({ code: 1 });
  });
});
