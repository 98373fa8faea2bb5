import { randomUUID } from 'node:crypto';
import { access, mkdir, readFile, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { environment } from '../env/environment';
import { artFiles } from '../files/store';
import type { MakeProxyRequest } from '../image/make-proxy';
import { runInWorker } from '../workers/pool';

const MAKE_PROXY_LIMIT_MS = 60_000;

/** A place for a small picture being written, and what gives it the name it is found by. */
export async function placeForProxy(): Promise<{
  path: string;
  keepFor: (pictureSha256: string) => Promise<void>;
  discard: () => Promise<void>;
}> {
  const folder = join(environment().filesDir, 'proxies');
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const path = join(folder, `${randomUUID()}.part`);
  return {
    path,
    keepFor: async (pictureSha256) => {
      const target = proxyPath(pictureSha256);
      await mkdir(dirname(target), { recursive: true, mode: 0o700 });
      await rename(path, target);
    },
    discard: () => rm(path, { force: true }),
  };
}

/** Where the small picture of a kept picture is found; it may not have been made yet. */
export function proxyPath(pictureSha256: string): string {
  if (!/^[0-9a-f]{64}$/.test(pictureSha256)) throw new Error(`not a SHA-256: ${pictureSha256}`);
  return join(environment().filesDir, 'proxies', pictureSha256.slice(0, 2), `${pictureSha256.slice(2)}.webp`);
}

/**
 * The small picture that screens show in place of art: WebP, at most 1500 px long. Made anew where it is missing, since
 * it can always be made again. Null where no such picture is kept.
 */
export async function artProxy(pictureSha256: string): Promise<Uint8Array | null> {
  const path = await proxyFile(pictureSha256);
  return path ? readFile(path) : null;
}

/** The file of a picture's small picture, made anew where it is missing; null where no such picture is kept. */
export async function proxyFile(pictureSha256: string): Promise<string | null> {
  const path = proxyPath(pictureSha256);
  if (await isThere(path)) return path;
  if (!(await artFiles().has(pictureSha256))) return null;
  const place = await placeForProxy();
  try {
    const request = { picturePath: artFiles().pathOf(pictureSha256), proxyPath: place.path };
    await runInWorker<MakeProxyRequest, void>('make-proxy', request, { timeoutMs: MAKE_PROXY_LIMIT_MS });
    await place.keepFor(pictureSha256);
  } finally {
    await place.discard();
  }
  return path;
}

async function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
