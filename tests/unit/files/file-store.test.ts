import { execFileSync } from 'node:child_process';
import { createHash, randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { DamagedFile, type FileStore, openStore, TooManyBytes } from '@/lib/server/files/file-store';

let folder: string;
let files: FileStore;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'yokemark-files-'));
  files = openStore(folder);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const sha = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

async function* inParts(
  bytes: Uint8Array,
  size: number,
  failAfter = Number.POSITIVE_INFINITY,
): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) {
    if (at >= failAfter) throw new Error('the sender went away');
    yield bytes.subarray(at, at + size);
  }
}

/** Every file in the store, with its folder. */
function everyFile(): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

describe('the file store', () => {
  it('gives back what it was given, under its SHA-256', async () => {
    const bytes = randomBytes(200_000);
    const stored = await files.store(inParts(bytes, 7_919));
    expect(stored).toEqual({ sha256: sha(bytes), bytes: bytes.length });
    expect(Buffer.from(await files.read(stored.sha256)).equals(bytes)).toBe(true);
    expect(await files.has(stored.sha256)).toBe(true);
  });

  it('keeps the same content once, also when it comes twice at once', async () => {
    const bytes = randomBytes(50_000);
    const [first, second] = await Promise.all([files.store(bytes), files.store(inParts(bytes, 999))]);
    await files.store(bytes);
    expect(first).toEqual(second);
    expect(everyFile()).toHaveLength(1);
  });

  it('leaves nothing of content that broke off', async () => {
    await expect(files.store(inParts(randomBytes(40_000), 1_000, 20_000))).rejects.toThrow('the sender went away');
    expect(everyFile()).toEqual([]);
  });

  it('leaves nothing of content that was too much, and does not wait for its end', async () => {
    async function* endless(): AsyncGenerator<Uint8Array> {
      for (;;) yield new Uint8Array(1_000);
    }
    await expect(files.take(endless(), 10_000)).rejects.toThrow(TooManyBytes);
    expect(everyFile()).toEqual([]);
  });

  it('takes exactly as much as the limit', async () => {
    const incoming = await files.take(inParts(new Uint8Array(10_000), 1_000), 10_000);
    expect(incoming.bytes).toBe(10_000);
    await incoming.discard();
    expect(everyFile()).toEqual([]);
  });

  it('leaves nothing on a disk that is full, and says so', () => {
    // A real limit of the operating system: no file of this process may grow past 64 blocks of 512 or 1024 bytes.
    const program = `
      import { openStore } from ${JSON.stringify(join(process.cwd(), 'lib/server/files/file-store.ts'))};
      const outcome = await openStore(${JSON.stringify(folder)}).store(new Uint8Array(1_000_000)).then(() => 'stored', (error) => error.name);
      process.stdout.write(outcome);
    `;
    const script = join(folder, 'fill.mts');
    writeFileSync(script, program);
    const said = execFileSync('sh', ['-c', 'ulimit -f 64; exec node --import tsx "$0"', script], { encoding: 'utf8' });
    rmSync(script);
    expect(said).toBe('NoRoomLeft');
    expect(everyFile()).toEqual([]);
  });

  it('notices that a stored file was changed', async () => {
    const { sha256 } = await files.store(randomBytes(100));
    writeFileSync(files.pathOf(sha256), 'something else');
    await expect(files.read(sha256)).rejects.toThrow(DamagedFile);
  });

  it('keeps a file that another part wrote at a place it was given', async () => {
    const place = await files.place();
    writeFileSync(place.path, 'written elsewhere');
    const stored = await place.keep();
    expect(stored.sha256).toBe(sha(Buffer.from('written elsewhere')));
    expect(everyFile()).toEqual([files.pathOf(stored.sha256)]);
  });

  it('takes away what a stopped process left behind a day ago, and nothing newer', async () => {
    mkdirSync(join(folder, 'incoming'));
    const [old, fresh] = ['old', 'fresh'].map((name) => join(folder, 'incoming', name));
    for (const path of [old, fresh]) writeFileSync(path ?? '', 'half a picture');
    const twoDaysAgo = Date.now() / 1000 - 2 * 86_400;
    utimesSync(old ?? '', twoDaysAgo, twoDaysAgo);
    await files.store(new Uint8Array(1));
    expect(readdirSync(join(folder, 'incoming'))).toEqual(['fresh']);
  });

  it('lets nobody else on the computer read what it keeps', async () => {
    const { sha256 } = await files.store(new Uint8Array(3));
    expect(statSync(files.pathOf(sha256)).mode & 0o077).toBe(0);
  });

  it('does not turn anything but a SHA-256 into a path', () => {
    expect(() => files.pathOf('../../etc/passwd')).toThrow(/not a SHA-256/);
  });
});
