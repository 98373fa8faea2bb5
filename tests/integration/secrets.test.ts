import { execFile } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest';

let folder: string;
let path: string;
const folders: string[] = [];

/** The module as a process that has just started has it. */
async function started() {
  vi.resetModules();
  const [{ addLinkKey, secrets, secretsExist }, code] = await Promise.all([
    import('@/lib/server/secrets/secrets'),
    import('@/lib/server/secrets/set-up-code'),
  ]);
  return { addLinkKey, secrets, secretsExist, ...code };
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'yokemark-secrets-'));
  folders.push(folder);
  path = join(folder, 'data', 'secrets.json');
  process.env.SECRETS_FILE = path;
});
afterAll(() => {
  for (const each of folders) rmSync(each, { recursive: true });
});

describe('secrets', () => {
  it('are made on first use, in a file that only its owner can read', async () => {
    const { secrets, secretsExist } = await started();
    expect(secretsExist()).toBe(false);
    const made = secrets();
    expect(secretsExist()).toBe(true);
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(statSync(join(folder, 'data')).mode & 0o777).toBe(0o700);
    expect(Buffer.from(made.authSecret, 'base64url')).toHaveLength(32);
    expect(made.linkKeys.map(({ version, key }) => [version, key.length])).toEqual([[1, 32]]);
    expect(made.signing.publicKey.asymmetricKeyType).toBe('ed25519');
  });

  it('are the same after a restart', async () => {
    const before = (await started()).secrets();
    const after = (await started()).secrets();
    expect(after.authSecret).toBe(before.authSecret);
    expect(after.linkKeys).toEqual(before.linkKeys);
    expect(after.signing.publicKey.export({ type: 'spki', format: 'pem' })).toBe(
      before.signing.publicKey.export({ type: 'spki', format: 'pem' }),
    );
  });

  it('are the same for processes that start at the same moment', async () => {
    const script = join(import.meta.dirname, 'secrets-process.ts');
    const run = async () => (await promisify(execFile)(process.execPath, ['--import', 'tsx', script])).stdout;
    const [first, second, third] = await Promise.all([run(), run(), run()]);
    expect(first).toHaveLength(43);
    expect([second, third]).toEqual([first, first]);
  });

  it('are closed to others when somebody opened the file to them', async () => {
    (await started()).secrets();
    chmodSync(path, 0o644);
    (await started()).secrets();
    expect(statSync(path).mode & 0o777).toBe(0o600);
  });

  it.each(['', '{"format":1', '{"format":2}', '{"format":1,"authSecret":"short","linkKeys":[],"signingKey":""}'])(
    'are never made anew over a damaged file: %j',
    async (damaged) => {
      (await started()).secrets();
      writeFileSync(path, damaged);
      const { secrets } = await started();
      expect(() => secrets()).toThrow('Put the file back from a backup');
      expect(readFileSync(path, 'utf8')).toBe(damaged);
    },
  );

  it('keep the old link keys when a new one is made', async () => {
    const { addLinkKey, secrets } = await started();
    const [old] = secrets().linkKeys;
    expect(addLinkKey().version).toBe(2);
    const { linkKeys } = (await started()).secrets();
    expect(linkKeys.map(({ version }) => version)).toEqual([2, 1]);
    expect(linkKeys[1]).toEqual(old);
    expect(statSync(path).mode & 0o777).toBe(0o600);
  });
});

describe('the set-up code', () => {
  it('is accepted however it is typed, until it is used', async () => {
    const { dropSetUpCode, isSetUpCode, makeSetUpCode } = await started();
    const code = makeSetUpCode();
    expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}(-[0-9A-HJKMNP-TV-Z]{4}){2}$/);
    const typed = code.toLowerCase().replaceAll('-', ' ').replaceAll('0', 'o').replaceAll('1', 'l');
    expect([isSetUpCode(code), isSetUpCode(` ${typed} `), isSetUpCode(code.replaceAll('-', '–'))]).toEqual([
      true,
      true,
      true,
    ]);
    dropSetUpCode();
    expect(isSetUpCode(code)).toBe(false);
  });

  it('is known to another process, and is not written down anywhere', async () => {
    const code = (await started()).makeSetUpCode();
    expect((await started()).isSetUpCode(code)).toBe(true);
    expect(readFileSync(`${path}.set-up`, 'utf8')).not.toContain(code.replaceAll('-', ''));
    expect(statSync(`${path}.set-up`).mode & 0o777).toBe(0o600);
  });

  it('ends when a newer one is made, and is never empty', async () => {
    const { isSetUpCode, makeSetUpCode } = await started();
    expect(isSetUpCode('')).toBe(false);
    const first = makeSetUpCode();
    const second = makeSetUpCode();
    expect([isSetUpCode(first), isSetUpCode(second), isSetUpCode('')]).toEqual([false, true, false]);
  });
});
