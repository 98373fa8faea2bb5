import { createHash } from 'node:crypto';
import { closeSync, openSync, readSync } from 'node:fs';
import sharp from 'sharp';
import { basicFactsOfPixels, factsOfPixels } from '@/lib/domain/art/check/facts-of-pixels';
import { inkOfPixels } from '@/lib/domain/art/ink';
import { openPicture, toPixels } from '@/lib/server/image/quiet-sharp';

/**
 * `decode`: the file to raw pixels and nothing else, the floor. `basic`: its hash, the ink's box, clear pixels, colours and
 * the backing. `all`: everything that the check measures.
 */
export type Work = 'decode' | 'basic' | 'all';
export type WorkRequest = { readonly work: Work; readonly path: string };

/** Does the work once and says how long it took, ms, and something of what came of it. */
export async function run({ work, path }: WorkRequest): Promise<{ ms: number; outcome: string }> {
  const began = performance.now();
  const outcome = await (work === 'decode' ? decoded(path) : checked(path, work));
  return { ms: performance.now() - began, outcome };
}

async function decoded(path: string): Promise<string> {
  const raw = await sharp(path, { ignoreIcc: true }).raw().toBuffer();
  return `${raw.length} bytes`;
}

async function checked(path: string, work: 'basic' | 'all'): Promise<string> {
  const sha256 = hashOf(path);
  const pixels = await toPixels(openPicture(path, { ignoreIcc: true }));
  const ink = inkOfPixels(pixels.rgba, pixels.widthPx, pixels.heightPx);
  if (!ink) throw new Error(`nothing prints of ${path}`);
  const facts = work === 'all' ? factsOfPixels(pixels, ink) : basicFactsOfPixels(pixels, ink);
  return `${sha256.slice(0, 8)} ${facts.look} ${facts.backing?.hex ?? 'no backing'} ${facts.inkPx} px`;
}

/** Read piece by piece into the same memory, as a file is that is still being received. */
function hashOf(path: string): string {
  const hash = createHash('sha256');
  const piece = new Uint8Array(1 << 20);
  const file = openSync(path, 'r');
  try {
    for (let read = readSync(file, piece); read > 0; read = readSync(file, piece)) hash.update(piece.subarray(0, read));
  } finally {
    closeSync(file);
  }
  return hash.digest('hex');
}
