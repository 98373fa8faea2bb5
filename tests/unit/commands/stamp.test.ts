import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { hashOf } from '@/lib/server/commands/stamp.mjs';

let folder: string;
const write = (path: string, content: string) => writeFileSync(join(folder, path), content);

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'yokemark-sources-'));
  for (const name of ['app', 'lib', 'lib/generated']) mkdirSync(join(folder, name));
  write('app/page.tsx', 'a page');
  write('lib/length.ts', 'a length');
  write('lib/generated/client.ts', 'a client');
});
afterEach(() => rmSync(folder, { recursive: true }));

const present = () => hashOf([join(folder, 'app'), join(folder, 'lib'), join(folder, 'missing')]);

describe('the hash that decides whether to build again', () => {
  it('stays while no source changes, whatever is generated from them', () => {
    const before = present();
    write('lib/generated/client.ts', 'another client');
    expect(present()).toBe(before);
  });

  it.each<[string, () => void]>([
    ['a file changes', () => write('app/page.tsx', 'another page')],
    ['a file is added', () => write('app/layout.tsx', '')],
    ['a file goes', () => rmSync(join(folder, 'lib/length.ts'))],
    ['a file is named anew', () => renameSync(join(folder, 'app/page.tsx'), join(folder, 'app/pages.tsx'))],
    [
      'words move from the end of one file to the start of the next',
      () => {
        write('app/page.tsx', 'a pag');
        write('lib/length.ts', 'ea length');
      },
    ],
  ])('changes when %s', (_, change) => {
    const before = present();
    change();
    expect(present()).not.toBe(before);
  });
});
