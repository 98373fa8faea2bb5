import { open } from 'node:fs/promises';

/** Enough of a file to tell its kind by. */
const HEAD_BYTES = 8_192;

/** The first bytes of a file. */
export async function readHead(path: string): Promise<Uint8Array> {
  const file = await open(path, 'r');
  try {
    const { buffer, bytesRead } = await file.read(new Uint8Array(HEAD_BYTES), 0, HEAD_BYTES, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await file.close();
  }
}
