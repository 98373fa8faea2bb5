import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { listArt } from '@/lib/server/art/list-art';
import { artProxy } from '@/lib/server/art/proxies';
import { type ReceivedArt, receiveArt } from '@/lib/server/art/receive-art';
import { MOST_ART_BYTES } from '@/lib/server/art/take-in-picture';
import { reader, write } from '@/lib/server/db/database';
import { readFile } from '@/lib/server/files/store';
import { addJob, type FreshDatabase, freshDatabase } from './database';

let fresh: FreshDatabase;
let jobId: string;

beforeAll(async () => {
  fresh = await freshDatabase();
});
afterAll(() => fresh.remove());
beforeEach(async () => {
  jobId = await write((tx) => addJob(tx, new Date()));
});

async function* parts(bytes: Uint8Array, failAfter = Number.POSITIVE_INFINITY): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += 10_000) {
    if (at >= failAfter) throw new Error('connection reset');
    yield bytes.subarray(at, at + 10_000);
  }
}

function upload(bytes: Uint8Array, options: { name?: string; declared?: number | null; job?: string } = {}) {
  const { name = 'crest.png', declared = bytes.length, job = jobId } = options;
  return receiveArt({ jobId: job, name, declaredLength: declared, body: parts(bytes) });
}

async function taken(bytes: Uint8Array, name?: string): Promise<Extract<ReceivedArt, { ok: true }>> {
  const received = await upload(bytes, name === undefined ? {} : { name });
  if (!received.ok) throw new Error(received.reason);
  return received;
}

/** A clear picture with one opaque rectangle: left, top, width, height. */
async function withRectangle(
  widthPx: number,
  heightPx: number,
  [left, top, width, height]: readonly [number, number, number, number],
): Promise<Buffer> {
  const ink = { create: { width, height, channels: 4, background: '#B0302A' } } as const;
  return sharp({ create: { width: widthPx, height: heightPx, channels: 4, background: '#00000000' } })
    .composite([{ input: ink, left, top }])
    .png()
    .toBuffer();
}

function filesLeft(): string[] {
  return readdirSync(join(fresh.folder, 'files'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

const data = (path: string) => readFileSync(join('tests/data', path));

describe('receiving art', () => {
  it('keeps the file under its SHA-256 and finds its ink', async () => {
    const bytes = await withRectangle(500, 400, [37, 21, 300, 200]);
    const { art, alreadyThere } = await taken(bytes, 'C:\\pictures\\Heron\u0000 crest.png');
    expect(alreadyThere).toBe(false);
    expect(art).toMatchObject({
      name: 'Heron crest.png',
      mediaType: 'image/png',
      bytes: bytes.length,
      notes: [],
      ref: {
        sha256: createHash('sha256').update(bytes).digest('hex'),
        widthPx: 500,
        heightPx: 400,
        inkBox: { x: 37, y: 21, width: 300, height: 200 },
      },
    });
    expect([...art.ref.inkHull].sort()).toEqual(
      [
        [37, 21],
        [337, 21],
        [37, 221],
        [337, 221],
      ].sort(),
    );
    expect(Buffer.from(await readFile(art.ref.sha256)).equals(bytes)).toBe(true);
    expect(await listArt(jobId)).toEqual([art]);
  });

  it('takes the same file for the same job once, and for another job again', async () => {
    const bytes = await withRectangle(90, 80, [1, 2, 30, 40]);
    const first = await taken(bytes, 'one.png');
    const [second, third] = await Promise.all([taken(bytes, 'two.png'), taken(bytes, 'three.png')]);
    for (const again of [second, third])
      expect(again).toMatchObject({ alreadyThere: true, art: { artId: first.art.artId } });
    const other = await write((tx) => addJob(tx, new Date()));
    expect(await upload(bytes, { job: other })).toMatchObject({ ok: true, alreadyThere: false });
    expect(await reader().file.count({ where: { sha256: first.art.ref.sha256 } })).toBe(1);
  });

  it('makes a small picture for screens, and makes it again when it is lost', async () => {
    const { art } = await taken(await withRectangle(3_000, 600, [0, 0, 3_000, 600]));
    const small = await sharp(Buffer.from((await artProxy(art.ref.sha256)) ?? '')).metadata();
    expect(small).toMatchObject({ format: 'webp', width: 1_500, height: 300 });
    const { rmSync } = await import('node:fs');
    rmSync(join(fresh.folder, 'files', 'proxies'), { recursive: true });
    expect(await sharp(Buffer.from((await artProxy(art.ref.sha256)) ?? '')).metadata()).toMatchObject({ width: 1_500 });
    expect(await artProxy('0'.repeat(64))).toBeNull();
  });

  it('draws an upright sRGB JPEG from the file itself, and says that all of it prints', async () => {
    const bytes = data('jpeg/video-001.jpeg');
    const { art } = await taken(bytes, 'photo.jpg');
    expect(art).toMatchObject({ mediaType: 'image/jpeg', notes: ['noTransparency'] });
    expect(art.ref.inkBox).toEqual({ x: 0, y: 0, width: 150, height: 103 });
    expect(Buffer.from(await readFile(art.ref.sha256)).equals(bytes)).toBe(true);
    // Source: the same picture as a PNG, in the test data of Go 1.19.
    await expectLike(await readFile(art.ref.sha256), data('jpeg/video-001.png'), 1.5);
  });

  it('draws a JPEG in printing inks from an sRGB copy, and keeps the file as it came', async () => {
    const bytes = data('jpeg/video-001.cmyk.jpeg');
    const { art } = await taken(bytes, 'print.jpg');
    const row = await reader().art.findUniqueOrThrow({ where: { id: art.artId }, include: { picture: true } });
    expect(Buffer.from(await readFile(row.fileSha256)).equals(bytes)).toBe(true);
    expect(row.picture).toMatchObject({ sha256: art.ref.sha256, mediaType: 'image/png', widthPx: 150, heightPx: 103 });
    expect(art.ref.sha256).not.toBe(row.fileSha256);
  });

  it.each([
    ['jpeg/video-001.cmyk.jpeg', 'jpeg/video-001.cmyk.png', 'convertedFromCmyk', 20],
    ['jpeg/video-001.rgb.jpeg', 'jpeg/video-001.rgb.png', null, 6],
    ['jpeg/video-005.gray.jpeg', 'jpeg/video-005.gray.png', null, 1.5],
  ] as const)('unpacks %s as %s', async (path, reference, note, within) => {
    const { art } = await taken(data(path), path);
    expect(art.notes).toEqual([...(note ? [note] : []), 'noTransparency']);
    await expectLike(await readFile(art.ref.sha256), data(reference), within);
  });

  it('stands a picture upright that a camera took lying on its side', async () => {
    // Source: jpeg-autorotate 5.0.3 samples, Exif orientation 6 with its upright result, which lost its colour profile on
    // the way: the colours of the two differ by 13 on average, of an unturned one by more than 50.
    const { art } = await taken(data('jpeg/lying.jpg'), 'lying.jpg');
    expect(art.notes).toContain('turnedUpright');
    const upright = await sharp(data('jpeg/lying-upright.jpg')).metadata();
    expect([art.ref.widthPx, art.ref.heightPx]).toEqual([upright.width, upright.height]);
    await expectLike(await readFile(art.ref.sha256), data('jpeg/lying-upright.jpg'), 16);
  });

  // Source: CIPA DC-008 (Exif), tag 0x0112: where the stored picture's first row and column belong.
  it.each([
    [1, 'topLeft'],
    [2, 'topRight'],
    [3, 'bottomRight'],
    [4, 'bottomLeft'],
    [5, 'topLeft'],
    [6, 'topRight'],
    [7, 'bottomRight'],
    [8, 'bottomLeft'],
  ] as const)('puts the first pixel of Exif orientation %i at the %s', async (orientation, corner) => {
    const stored = sharp({ create: { width: 120, height: 80, channels: 3, background: '#FFFFFF' } }).composite([
      { input: { create: { width: 24, height: 24, channels: 3, background: '#000000' } }, left: 0, top: 0 },
    ]);
    const { art } = await taken(
      await stored.jpeg({ quality: 100 }).withMetadata({ orientation }).toBuffer(),
      'turned.jpg',
    );
    const swapped = orientation >= 5;
    expect([art.ref.widthPx, art.ref.heightPx]).toEqual(swapped ? [80, 120] : [120, 80]);
    const at = {
      topLeft: [10, 10],
      topRight: [art.ref.widthPx - 10, 10],
      bottomLeft: [10, art.ref.heightPx - 10],
      bottomRight: [art.ref.widthPx - 10, art.ref.heightPx - 10],
    }[corner] as [number, number];
    const { data: pixels, info } = await sharp(Buffer.from(await readFile(art.ref.sha256)))
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(pixels[(at[1] * info.width + at[0]) * info.channels]).toBeLessThan(40);
  });

  it('uses the first frame of an animated PNG and says so', async () => {
    const still = await withRectangle(64, 64, [4, 6, 30, 20]);
    const { art } = await taken(asAnimation(still));
    expect(art.notes).toEqual(['firstFrameOnly']);
    expect(art.ref.inkBox).toEqual({ x: 4, y: 6, width: 30, height: 20 });
  });

  it('keeps a drawing as it came, and draws from a picture that was made of it', async () => {
    const svg = Buffer.from(
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 10"><rect width="100" height="10" fill="#B0302A"/><text>x</text></svg>',
    );
    const { art } = await taken(svg, 'crest.svg');
    expect(art).toMatchObject({ mediaType: 'image/svg+xml', bytes: svg.length, notes: ['textLeftOut'] });
    expect(art.ref).toMatchObject({ widthPx: 4_500, inkBox: { x: 0, y: 0, width: 2_250, height: 225 } });
    const row = await reader().art.findUniqueOrThrow({ where: { id: art.artId }, include: { picture: true } });
    expect(Buffer.from(await readFile(row.fileSha256)).equals(svg)).toBe(true);
    expect(row.picture.mediaType).toBe('image/png');
    expect(await sharp(Buffer.from(await readFile(art.ref.sha256))).metadata()).toMatchObject({ format: 'png' });
  });
});

describe('refusing art', () => {
  async function refused(received: Promise<ReceivedArt>): Promise<unknown> {
    const [filesBefore, rowsBefore] = [filesLeft(), await reader().file.count()];
    const answer = await received;
    expect(filesLeft()).toEqual(filesBefore);
    expect(await reader().file.count()).toBe(rowsBefore);
    expect(await listArt(jobId)).toEqual([]);
    return answer;
  }

  it('says what is wrong with each file and leaves nothing behind', async () => {
    const png = await withRectangle(200, 200, [10, 10, 100, 100]);
    expect(await refused(upload(new Uint8Array()))).toEqual({ ok: false, reason: 'empty' });
    expect(await refused(upload(Buffer.from('Dear printer, see attached.')))).toEqual({
      ok: false,
      reason: 'notAPicture',
    });
    expect(await refused(upload(png, { declared: png.length + 1 }))).toEqual({ ok: false, reason: 'cutShort' });
    expect(await refused(upload(png.subarray(0, png.length - 20)))).toEqual({ ok: false, reason: 'damaged' });
    expect(await refused(upload(await withRectangle(60, 60, [0, 0, 1, 1]).then(allClear)))).toEqual({
      ok: false,
      reason: 'nothingToPrint',
    });
    expect(await refused(upload(png, { job: 'no-such-job' }))).toEqual({ ok: false, reason: 'noJob' });
  });

  it.each([
    ['formats/patch.heic', 'heicNotRead'],
    ['formats/locked.pdf', 'pdfLocked'],
  ])('says of %s: %s', async (path, reason) => {
    expect(await refused(upload(data(path)))).toEqual({ ok: false, reason });
  });

  it('names a kind that is not taken', async () => {
    // The first bytes of a PSD (Adobe Photoshop File Formats, file header).
    const psd = Buffer.concat([Buffer.from('8BPS\0\x01', 'latin1'), Buffer.alloc(400)]);
    expect(await refused(upload(psd))).toEqual({ ok: false, reason: 'kindNotTaken', kind: 'PSD' });
  });

  it('answers others while a drawing that grows without end is refused', async () => {
    const level = (l: number) => `<g id="l${l + 1}">${`<use href="#l${l}"/>`.repeat(10)}</g>`;
    const levels = Array.from({ length: 12 }, (_, l) => level(l)).join('');
    const bomb = Buffer.from(
      `<svg xmlns="http://www.w3.org/2000/svg"><g id="l0"><rect width="9" height="9"/></g>${levels}</svg>`,
    );
    const refusing = refused(upload(bomb));
    expect(await listArt(jobId)).toEqual([]);
    expect(await refusing).toEqual({ ok: false, reason: 'tooInvolved' });
  });

  // Sources: the test data of Go 1.19 (tests/data/SOURCES.md).
  it.each([
    'png/invalid-crc32.png',
    'png/invalid-noend.png',
    'png/invalid-trunc.png',
    'png/invalid-zlib.png',
    'jpeg/video-001.progressive.truncated.jpeg',
  ])('finds %s damaged', async (path) => {
    expect(await refused(upload(data(path)))).toEqual({ ok: false, reason: 'damaged' });
  });

  it('refuses more than 25 MB, declared or not', async () => {
    const large = Buffer.alloc(MOST_ART_BYTES + 1, 7);
    expect(await refused(upload(large))).toEqual({ ok: false, reason: 'tooLarge' });
    expect(await refused(upload(large, { declared: null }))).toEqual({ ok: false, reason: 'tooLarge' });
  });

  it('notices an upload that breaks off', async () => {
    const bytes = Buffer.alloc(100_000, 1);
    const body = parts(bytes, 50_000);
    expect(await refused(receiveArt({ jobId, name: 'a.png', declaredLength: bytes.length, body }))).toEqual({
      ok: false,
      reason: 'cutShort',
    });
  });

  it('refuses 30 000 × 30 000 px before it unpacks them', async () => {
    const bytes = oneColourPng(30_000, 30_000);
    expect(bytes.length).toBeLessThan(200_000);
    expect(await refused(upload(bytes))).toEqual({ ok: false, reason: 'tooManyPixels' });
  });
});

async function expectLike(picture: Uint8Array, reference: Uint8Array, within: number): Promise<void> {
  const [ours, theirs] = await Promise.all(
    [picture, reference].map((bytes) => sharp(Buffer.from(bytes)).removeAlpha().toColourspace('srgb').raw().toBuffer()),
  );
  if (!ours || !theirs) throw new Error('nothing to compare');
  expect(ours.length).toBe(theirs.length);
  const difference = ours.reduce((sum, value, index) => sum + Math.abs(value - (theirs[index] ?? 0)), 0) / ours.length;
  expect(difference).toBeLessThan(within);
}

async function allClear(png: Buffer): Promise<Buffer> {
  return sharp(png)
    .ensureAlpha(0)
    .composite([
      { input: Buffer.from([0, 0, 0, 255]), raw: { width: 1, height: 1, channels: 4 }, tile: true, blend: 'dest-out' },
    ])
    .png()
    .toBuffer();
}

function chunk(type: string, body: Uint8Array): Buffer {
  const bytes = Buffer.alloc(12 + body.length);
  bytes.writeUInt32BE(body.length, 0);
  bytes.write(type, 4, 'latin1');
  bytes.set(body, 8);
  bytes.writeUInt32BE(crc32(bytes.subarray(4, 8 + body.length)), 8 + body.length);
  return bytes;
}

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

function header(width: number, height: number, depth: number, colourType: number): Buffer {
  const body = Buffer.alloc(13);
  body.writeUInt32BE(width, 0);
  body.writeUInt32BE(height, 4);
  body.set([depth, colourType, 0, 0, 0], 8);
  return chunk('IHDR', body);
}

/** A grey one-colour PNG, one bit a pixel: enormous once unpacked, small as a file. */
function oneColourPng(width: number, height: number): Buffer {
  const rows = Buffer.alloc(height * (1 + Math.ceil(width / 8)));
  const packed = chunk('IDAT', deflateSync(rows, { level: 9 }));
  return Buffer.concat([SIGNATURE, header(width, height, 1, 0), packed, chunk('IEND', Buffer.alloc(0))]);
}

/** The still as the first of two frames (PNG Third Edition, 11.3.6: acTL and fcTL). */
function asAnimation(still: Buffer): Buffer {
  const afterHeader = 8 + 25;
  const acTl = Buffer.alloc(8);
  acTl.writeUInt32BE(1, 0);
  return Buffer.concat([still.subarray(0, afterHeader), chunk('acTL', acTl), still.subarray(afterHeader)]);
}
