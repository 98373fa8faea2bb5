import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reader } from '@/lib/server/db/database';
import { fontBytes } from '@/lib/server/fonts/font-bytes';
import { keepPackagedFonts } from '@/lib/server/fonts/keep-packaged-fonts';
import { listFonts, listOwnFonts, withdrawFont } from '@/lib/server/fonts/list-fonts';
import { offeredPackagedFonts } from '@/lib/server/fonts/packaged-fonts';
import { receiveFont } from '@/lib/server/fonts/receive-font';
import { readPackagedFont } from '@/lib/server/text/font-file';
import { loadTypeEngine } from '@/lib/server/text/load-type-engine';
import { type FreshDatabase, freshDatabase } from './database';
import { addShop, someMaker } from './job-fixture';

let fresh: FreshDatabase;
const maker = someMaker();

beforeAll(async () => {
  fresh = await freshDatabase();
  await addShop(maker);
});
afterAll(() => fresh.remove());

/** A whole font that is not among those offered. */
const OWN = Buffer.from(readPackagedFont('@expo-google-fonts/rubik/300Light_Italic/Rubik_300Light_Italic.ttf'));

function hand(bytes: Buffer, fileName = 'Regatta.ttf', declaredLength: number | null = bytes.length) {
  return receiveFont(maker, { fileName, declaredLength, body: Readable.from([bytes]) });
}

/** The font with one thing changed. A table is found by its entry in the directory (OpenType 1.9, table directory). */
function changed(change: (font: Buffer, entryOf: (table: string) => number) => void): Buffer {
  const font = Buffer.from(OWN);
  change(font, (table) => {
    const at = font.indexOf(table, 12, 'latin1');
    if (at < 0) throw new Error(`no table ${table}`);
    return at;
  });
  return font;
}

function filesKept(): string[] {
  const folder = join(fresh.folder, 'files');
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map(({ name }) => name);
}

const refused: [string, () => Buffer | Promise<Buffer>, string][] = [
  ['an empty file', () => Buffer.alloc(0), 'empty'],
  ['a WOFF2', () => Buffer.concat([Buffer.from('wOF2'), Buffer.alloc(200)]), 'woff2'],
  ['a WOFF', () => Buffer.concat([Buffer.from('wOFF'), Buffer.alloc(200)]), 'woff'],
  ['a collection', () => Buffer.concat([Buffer.from('ttcf'), Buffer.alloc(200)]), 'collection'],
  ['a packed folder', () => Buffer.concat([Buffer.from('PK\x03\x04'), Buffer.alloc(200)]), 'archive'],
  ['an old PostScript font', () => Buffer.from('%!PS-AdobeFont-1.0: Regatta'), 'oldFont'],
  [
    'a renamed picture',
    () =>
      sharp({ create: { width: 8, height: 8, channels: 3, background: '#800' } })
        .png()
        .toBuffer(),
    'picture',
  ],
  ['a letter to the shop', () => Buffer.from('Dear shop, the font is attached.'), 'notAFont'],
  ['a font cut off in the middle', () => OWN.subarray(0, OWN.length / 2), 'damaged'],
  ['nothing but a font’s first bytes', () => OWN.subarray(0, 4), 'damaged'],
  [
    'a font without a cmap',
    () => changed((font, entryOf) => font.write('xmap', entryOf('cmap'), 'latin1')),
    'noCharacters',
  ],
  [
    'a font whose cmap is empty',
    // No subtables, numTables at offset 2 (OpenType 1.9, cmap table).
    () => changed((font, entryOf) => font.writeUInt16BE(0, font.readUInt32BE(entryOf('cmap') + 8) + 2)),
    'noCharacters',
  ],
  [
    'a font without outlines',
    () => changed((font, entryOf) => font.write('xlyf', entryOf('glyf'), 'latin1')),
    'noOutlines',
  ],
  [
    'a font without its head',
    () => changed((font, entryOf) => font.write('xead', entryOf('head'), 'latin1')),
    'damaged',
  ],
  [
    'a font that may not be used in documents',
    () => changed((font, entryOf) => font.writeUInt16BE(0x0002, font.readUInt32BE(entryOf('OS/2') + 8) + 8)),
    'mayNotEmbed',
  ],
];

describe('a font of the shop’s own', () => {
  it.each(refused)('is refused where it is %s, and leaves nothing behind', async (_, make, reason) => {
    expect(await hand(await make())).toEqual({ ok: false, reason });
    expect(filesKept()).toEqual([]);
  });

  it('is refused where it broke off or is too large', async () => {
    expect(await hand(OWN, 'Regatta.ttf', OWN.length + 1)).toEqual({ ok: false, reason: 'cutShort' });
    expect(await hand(OWN, 'Regatta.ttf', 21 * 1024 * 1024)).toEqual({ ok: false, reason: 'tooLarge' });
    expect(filesKept()).toEqual([]);
  });

  it('is offered under its own name, sets type, and is kept when it is no longer offered', async () => {
    const received = await hand(OWN, 'whatever it is called.ttf');
    if (!received.ok) throw new Error(received.reason);
    expect(received).toMatchObject({ ref: { family: 'Rubik', style: 'Light Italic' }, alreadyThere: false });
    expect(await hand(OWN)).toMatchObject({ ok: true, alreadyThere: true });
    const [own] = await listOwnFonts(maker);
    expect(own).toMatchObject({ ref: received.ref, fileName: 'whatever it is called.ttf', embedding: 'installable' });
    expect((await listFonts(maker)).offered[0]).toEqual({ ref: received.ref, kind: 'own' });

    expect(await withdrawFont(maker, received.ref.sha256)).toEqual({ ok: true });
    expect(await withdrawFont(maker, received.ref.sha256)).toEqual({ ok: false });
    expect(await listOwnFonts(maker)).toEqual([]);
    const engine = await loadTypeEngine([received.ref]);
    expect(engine.outlineLine('Zoë', received.ref)).toMatchObject({ missing: [], borrowed: [] });
  });

  it('is known where it is one that comes with the app', async () => {
    const [shipped] = offeredPackagedFonts();
    if (!shipped) throw new Error('none is offered');
    expect(await hand(Buffer.from(shipped.bytes))).toEqual({ ok: true, ref: shipped.ref, alreadyThere: true });
    expect(await listOwnFonts(maker)).toEqual([]);
  });
});

describe('fonts that come with the app', () => {
  it('are kept among the shop’s files, once', async () => {
    await keepPackagedFonts();
    await keepPackagedFonts();
    const rows = await reader().font.findMany({ where: { origin: 'shipped' } });
    expect(new Set(rows.map(({ family }) => family))).toContain('Noto Sans Hebrew');
    for (const { sha256, byteLength } of rows) {
      const path = join(fresh.folder, 'files', sha256.slice(0, 2), sha256.slice(2));
      expect(readFileSync(path)).toHaveLength(byteLength);
      expect(await fontBytes(sha256)).toHaveLength(byteLength);
    }
  });
});
