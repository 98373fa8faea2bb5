import { reader } from '../db/database';
import { readFile } from '../files/store';
import { packagedFont } from './packaged-fonts';

/** A font's file by its SHA-256: a shipped one's, or one that the shop keeps. Null where there is none. */
export async function fontBytes(sha256: string): Promise<Uint8Array | null> {
  const shipped = packagedFont(sha256);
  if (shipped) return shipped.bytes;
  const kept = await reader().font.findUnique({ where: { sha256 }, select: { sha256: true } });
  return kept ? readFile(kept.sha256) : null;
}
