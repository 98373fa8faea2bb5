import type { Transaction } from '../db/open-database';
import type { StoredFile } from '../files/file-store';

/** Notes that content is kept, once: what kind it is and how large, where that is known. */
export async function addFile(
  tx: Transaction,
  { sha256, bytes }: StoredFile,
  mediaType: string,
  size: { widthPx: number | null; heightPx: number | null },
  now: Date,
): Promise<void> {
  const known = await tx.file.findUnique({ where: { sha256 }, select: { sha256: true } });
  if (!known) await tx.file.create({ data: { sha256, byteLength: bytes, mediaType, ...size, createdAt: now } });
}
