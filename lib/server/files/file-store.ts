import { createHash, randomUUID } from 'node:crypto';
import { createReadStream, type ReadStream } from 'node:fs';
import { access, mkdir, open, readFile as readBytes, readdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { syncFolder } from './sync-folder';

/** Content that lies in the store: its SHA-256 in hex is its name. */
export type StoredFile = { readonly sha256: string; readonly bytes: number };

/** A file on its way in. It has no name yet: `keep` gives it one, `discard` takes every trace of it away. */
export type IncomingFile = StoredFile & {
  readonly path: string;
  readonly keep: () => Promise<StoredFile>;
  readonly discard: () => Promise<void>;
};

export type FileStore = {
  /** Keeps content for good; content that is there already is kept once. Throws `NoRoomLeft`. */
  readonly store: (content: Uint8Array | AsyncIterable<Uint8Array>) => Promise<StoredFile>;
  /** Takes content in without keeping it yet. Throws `TooManyBytes` past the limit, `NoRoomLeft`, and what the body throws. */
  readonly take: (content: AsyncIterable<Uint8Array>, limitBytes?: number) => Promise<IncomingFile>;
  /** A path for another program part to write a file at, and what then keeps it. */
  readonly place: () => Promise<{ path: string; keep: () => Promise<StoredFile>; discard: () => Promise<void> }>;
  readonly read: (sha256: string) => Promise<Uint8Array>;
  readonly has: (sha256: string) => Promise<boolean>;
  readonly openFile: (sha256: string) => ReadStream;
  readonly pathOf: (sha256: string) => string;
  /** Takes content away for good: only for what can be drawn again or has to be erased. */
  readonly remove: (sha256: string) => Promise<void>;
};

/** More arrived than the limit allows; nothing of it was kept. */
export class TooManyBytes extends Error {
  override readonly name = 'TooManyBytes';
}

/** The disk is full or the quota is used up; nothing was kept. */
export class NoRoomLeft extends Error {
  override readonly name = 'NoRoomLeft';
}

/** What a file says when its bytes no longer have the SHA-256 it is stored under. */
export class DamagedFile extends Error {
  override readonly name = 'DamagedFile';
}

const noRoomCodes = new Set(['ENOSPC', 'EDQUOT', 'EFBIG']);

/** Files that a stopped process left on their way in are taken away after this long. */
const ABANDONED_AFTER_MS = 24 * 60 * 60 * 1000;

/** A store of files by content, in `folder`. Folders are made when they are first needed. */
export function openStore(folder: string): FileStore {
  const incomingFolder = join(folder, 'incoming');
  let swept = false;

  async function newIncomingPath(): Promise<string> {
    await mkdir(incomingFolder, { recursive: true, mode: 0o700 }).catch((error: unknown) => {
      throw asStoreError(error);
    });
    if (!swept) {
      swept = true;
      await removeAbandoned(incomingFolder, Date.now() - ABANDONED_AFTER_MS);
    }
    return join(incomingFolder, randomUUID());
  }

  async function keep(path: string, { sha256, bytes }: StoredFile): Promise<StoredFile> {
    const target = pathOf(sha256);
    try {
      if (!(await exists(target))) {
        await mkdir(dirname(target), { recursive: true, mode: 0o700 });
        await rename(path, target);
        await syncFolder(dirname(target));
        await syncFolder(folder);
      }
    } catch (error) {
      throw asStoreError(error);
    } finally {
      await rm(path, { force: true });
    }
    return { sha256, bytes };
  }

  function pathOf(sha256: string): string {
    if (!/^[0-9a-f]{64}$/.test(sha256)) throw new Error(`not a SHA-256: ${sha256}`);
    return join(folder, sha256.slice(0, 2), sha256.slice(2));
  }

  async function take(
    content: AsyncIterable<Uint8Array>,
    limitBytes = Number.POSITIVE_INFINITY,
  ): Promise<IncomingFile> {
    const path = await newIncomingPath();
    const discard = () => rm(path, { force: true });
    try {
      const stored = await writeDurably(path, content, limitBytes);
      return { ...stored, path, keep: () => keep(path, stored), discard };
    } catch (error) {
      await discard();
      throw asStoreError(error);
    }
  }

  return {
    take,
    pathOf,
    async store(content) {
      const incoming = await take(content instanceof Uint8Array ? once(content) : content);
      return incoming.keep();
    },
    async place() {
      const path = await newIncomingPath();
      return {
        path,
        keep: async () => keep(path, await syncAndHash(path)),
        discard: () => rm(path, { force: true }),
      };
    },
    async read(sha256) {
      const bytes = await readBytes(pathOf(sha256));
      const found = createHash('sha256').update(bytes).digest('hex');
      if (found !== sha256) throw new DamagedFile(`${pathOf(sha256)} now has the SHA-256 ${found}`);
      return bytes;
    },
    has: (sha256) => exists(pathOf(sha256)),
    openFile: (sha256) => createReadStream(pathOf(sha256)),
    remove: (sha256) => rm(pathOf(sha256), { force: true }),
  };
}

async function writeDurably(path: string, content: AsyncIterable<Uint8Array>, limitBytes: number): Promise<StoredFile> {
  const hash = createHash('sha256');
  let bytes = 0;
  const file = await open(path, 'wx', 0o600);
  try {
    for await (const chunk of content) {
      bytes += chunk.byteLength;
      if (bytes > limitBytes) throw new TooManyBytes(`more than ${limitBytes} bytes`);
      hash.update(chunk);
      await file.writeFile(chunk);
    }
    await file.sync();
  } finally {
    await file.close();
  }
  return { sha256: hash.digest('hex'), bytes };
}

async function syncAndHash(path: string): Promise<StoredFile> {
  const file = await open(path, 'r+');
  try {
    await file.sync();
  } finally {
    await file.close();
  }
  const hash = createHash('sha256');
  let bytes = 0;
  for await (const chunk of createReadStream(path) as AsyncIterable<Uint8Array>) {
    hash.update(chunk);
    bytes += chunk.byteLength;
  }
  return { sha256: hash.digest('hex'), bytes };
}

async function* once(content: Uint8Array): AsyncGenerator<Uint8Array> {
  yield content;
}

async function exists(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}

async function removeAbandoned(folder: string, beforeMs: number): Promise<void> {
  for (const name of await readdir(folder)) {
    const path = join(folder, name);
    const found = await stat(path).catch(() => null);
    if (found && found.mtimeMs < beforeMs) await rm(path, { force: true });
  }
}

function asStoreError(error: unknown): unknown {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return noRoomCodes.has(code) ? new NoRoomLeft(code, { cause: error }) : error;
}
