import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

// A small project of its own in which every rule is broken once: a rule that can no longer be broken is no rule.
const broken: [rule: string, file: string, source: string][] = [
  ['nothing-imports-app', 'components/roster/from-app.tsx', "import '@/app/page';"],
  ['nothing-imports-tests', 'lib/server/from-tests.ts', "import '@/tests/browser/page';"],
  ['components-stay-in-the-browser', 'components/roster/from-server.tsx', "import '@/lib/server/db/rows';"],
  ['components-ui-knows-no-garments', 'components/ui/from-domain.tsx', "import '@/lib/domain/layout/layout';"],
  ['components-flat-is-the-drawing', 'components/flat/from-roster.tsx', "import '@/components/roster/roster';"],
  ['components-art-takes-pictures-in', 'components/art/from-roster.tsx', "import '@/components/roster/roster';"],
  ['components-one-subject-a-folder', 'components/table/from-roster.tsx', "import '@/components/roster/roster';"],
  ['components-use-no-node', 'components/roster/from-node.tsx', "import 'node:fs';"],
  ['server-imports-domain-and-words', 'lib/server/from-editor.ts', "import '@/lib/editor/editor';"],
  ['messages-put-the-domain-in-words', 'lib/messages/from-server.ts', "import '@/lib/server/db/rows';"],
  ['editor-imports-domain', 'lib/editor/from-server.ts', "import '@/lib/server/db/rows';"],
  ['domain-imports-domain', 'lib/domain/layout/from-editor.ts', "import '@/lib/editor/editor';"],
  ['domain-and-editor-use-no-node', 'lib/domain/measure/from-node.ts', "export const late = () => import('path');"],
  ['domain-and-editor-are-pure', 'lib/editor/from-luxon.ts', "import 'luxon';"],
  ['domain-order-measure', 'lib/domain/measure/from-layout.ts', "import type { L } from '@/lib/domain/layout/layout';"],
  ['domain-order-art', 'lib/domain/art/from-garment.ts', "import '@/lib/domain/garment/garment';"],
  ['outside-part-sharp', 'lib/server/mail/from-sharp.ts', "import 'sharp';"],
  ['outside-part-prisma', 'lib/server/mail/from-sqlite.ts', "import 'better-sqlite3';"],
  ['outside-part-nodemailer', 'lib/server/image/from-mail.ts', "import 'nodemailer';"],
  ['outside-part-konva', 'components/flat/from-konva.tsx', "import 'konva';"],
  ['outside-part-next', 'lib/server/mail/from-next.ts', "import 'next/headers';"],
  ['generated-client-stays-in-db', 'lib/server/mail/from-client.ts', "import '@/lib/server/db/generated/client';"],
  ['no-drawer-for-odds-and-ends', 'lib/server/from-drawer.ts', "import './utils';"],
  ['nothing-unresolved', 'lib/server/from-nowhere.ts', "import './nowhere';"],
  ['no-cycles', 'lib/server/cycle-a.ts', "import './cycle-b';"],
];

const allowed: [file: string, source: string][] = [
  ['app/page.tsx', "import '@/components/roster/roster'; import '@/lib/server/db/rows'; import 'next/link';"],
  ['components/roster/roster.tsx', "import '@/components/ui/button'; import '@/lib/domain/layout/layout';"],
  ['components/ui/button.tsx', "import 'next/link';"],
  ['lib/domain/layout/layout.ts', "import '@/lib/domain/garment/garment'; import 'zod'; export type L = 1;"],
  ['lib/domain/garment/garment.ts', 'export {};'],
  ['lib/editor/editor.ts', "import '@/lib/domain/layout/layout';"],
  ['lib/server/db/rows.ts', "import './generated/client'; import 'better-sqlite3'; import 'node:fs';"],
  ['lib/server/db/generated/client.ts', 'export {};'],
  ['lib/server/utils.ts', 'export {};'],
  ['lib/server/cycle-b.ts', "import './cycle-a';"],
  ['tests/browser/page.ts', "import 'better-sqlite3';"],
];

let folder: string;
let found: Set<string>;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'yokemark-rules-'));
  for (const name of ['.dependency-cruiser.mjs', 'tsconfig.json', 'package.json'])
    copyFileSync(name, join(folder, name));
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'));
  for (const [file, source] of [...broken.map(([, ...rest]) => rest), ...allowed]) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), source);
  }
  const script = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const args = [
    script,
    '--config',
    '.dependency-cruiser.mjs',
    '--output-type',
    'json',
    'app',
    'components',
    'lib',
    'tests',
  ];
  const { stdout } = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8', maxBuffer: 64_000_000 });
  const { summary } = JSON.parse(stdout) as { summary: { violations: { from: string; rule: { name: string } }[] } };
  found = new Set(summary.violations.map(({ from, rule }) => `${rule.name} ${from}`));
});

afterAll(() => rmSync(folder, { recursive: true }));

describe('the import rules', () => {
  it.each(broken)('refuse what breaks %s', (rule, file) => {
    expect([...found]).toContain(`${rule} ${file}`);
  });

  it('refuse nothing that is in its place', () => {
    const inPlace = new Set(allowed.map(([file]) => file));
    const faults = [...found].filter((fault) => inPlace.has(fault.split(' ')[1] ?? ''));
    expect(faults.filter((fault) => !fault.startsWith('no-cycles'))).toEqual([]);
  });
});
