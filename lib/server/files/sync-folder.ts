import { open } from 'node:fs/promises';

/**
 * Makes a rename inside a folder survive a power cut: on most file systems the name is only safe once the folder itself
 * is written (open(2), fsync(2)). Windows has no such call and needs none.
 */
export async function syncFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
