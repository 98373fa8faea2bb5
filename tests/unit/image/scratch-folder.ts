import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export type Scratch = {
  readonly folder: string;
  /** Writes a file of its own and gives its path. */
  keep: (content: Uint8Array | string, name?: string) => string;
  remove: () => void;
};

/** A folder for files that are read from disk; gone after the tests. */
export function scratchFolder(): Scratch {
  const folder = mkdtempSync(join(tmpdir(), 'yokemark-'));
  let count = 0;
  return {
    folder,
    keep: (content, name) => {
      count += 1;
      const path = join(folder, name ?? String(count));
      writeFileSync(path, content);
      return path;
    },
    remove: () => rmSync(folder, { recursive: true }),
  };
}
