import { readdirSync, readFileSync } from 'node:fs';
import { PNG } from 'pngjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type ArtMediaType, fileKind } from '@/lib/server/image/file-kind';
import type { Pixels } from '@/lib/server/image/quiet-sharp';
import { type UnpackedArt, unpackArt } from '@/lib/server/image/unpack-art';
import { corruptPngs } from './corrupt-pngs';
import { type Scratch, scratchFolder } from './scratch-folder';

let scratch: Scratch;
beforeAll(() => {
  scratch = scratchFolder();
  return scratch.remove;
});

async function unpackedFile(path: string): Promise<UnpackedArt> {
  const kind = await fileKind(readFileSync(path).subarray(0, 8_192));
  if (kind.kind !== 'art') throw new Error(`${path}: ${kind.kind}`);
  return unpackArt(path, kind.mediaType);
}

async function pixelsOf(path: string): Promise<Pixels & { notes: readonly string[] }> {
  const unpacked = await unpackedFile(path);
  if (!unpacked.ok) throw new Error(`${path}: ${unpacked.reason}`);
  return { ...unpacked.pixels, notes: unpacked.notes };
}

const pngSuite = readdirSync('tests/data/png').filter((name) => name.endsWith('.png') && !name.startsWith('invalid-'));

describe('PNG', () => {
  // Sources: PngSuite by Willem van Schaik; pngjs 7, which shares no code with the decoder used here.
  it.each(pngSuite)('unpacks PngSuite %s pixel for pixel as another decoder does', async (name) => {
    const ours = await pixelsOf(`tests/data/png/${name}`);
    const theirs = PNG.sync.read(readFileSync(`tests/data/png/${name}`));
    expect([ours.widthPx, ours.heightPx]).toEqual([theirs.width, theirs.height]);
    expect(furthestApart(ours.rgba, theirs.data)).toBeLessThanOrEqual(1);
  });

  // Source: PngSuite, the list of its corrupt files; each fault is put into one of its sound ones.
  it.each(corruptPngs(readFileSync('tests/data/png/basn0g01.png')))('refuses %s', async (_fault, bytes) => {
    const kind = await fileKind(bytes);
    if (kind.kind === 'unknown') return;
    expect(kind).toEqual({ kind: 'art', mediaType: 'image/png' });
    expect(await unpackArt(scratch.keep(bytes), 'image/png')).toEqual({ ok: false, reason: 'damaged' });
  });
});

describe('colour', () => {
  const { patches } = JSON.parse(readFileSync('tests/data/colour/argyll-srgb.json', 'utf8')) as {
    patches: Record<string, [number, number, number][]>;
  };

  // Source: ArgyllCMS 2.3.1, whose colour engine is its own; the decoder here uses Little CMS.
  it.each([
    ['wide.png', 'convertedToSrgb', 6],
    ['inks.tif', 'convertedFromCmyk', 3],
  ])('brings the patches of %s to the sRGB another colour library gives', async (name, note, within) => {
    const { rgba, notes } = await pixelsOf(`tests/data/colour/${name}`);
    expect(notes).toContain(note);
    const differences = (patches[name] ?? []).flatMap((patch, index) =>
      patch.map((value, channel) => Math.abs(value - (rgba[index * 4 + channel] ?? 0))),
    );
    expect(differences).toHaveLength(108);
    expect(Math.max(...differences)).toBeLessThanOrEqual(within);
    expect(differences.reduce((sum, each) => sum + each, 0) / differences.length).toBeLessThan(1);
  });
});

describe('other kinds of pictures', () => {
  // Made by ImageMagick 6: a #B0302A rectangle from (5, 5) to (24, 19) on nothing; its AVIF lost what is clear.
  it.each([
    ['patch.webp', 'image/webp', []],
    ['patch.tif', 'image/tiff', []],
    ['patch-16.tif', 'image/tiff', []],
    ['patch.avif', 'image/avif', []],
    ['moving.gif', 'image/gif', ['firstFrameOnly']],
    ['two-pages.tif', 'image/tiff', ['firstPageOnly']],
  ] as const)('unpacks %s, and is never the picture itself', async (name, mediaType, notes) => {
    const path = `tests/data/formats/${name}`;
    expect(await fileKind(readFileSync(path))).toEqual({ kind: 'art', mediaType });
    const unpacked = await unpackedFile(path);
    if (!unpacked.ok) throw new Error(unpacked.reason);
    expect(unpacked).toMatchObject({ notes, fileIsPicture: false });
    const { rgba, widthPx, heightPx } = unpacked.pixels;
    expect([widthPx, heightPx]).toEqual([40, 30]);
    const at = (x: number, y: number) => [...rgba.subarray((y * 40 + x) * 4, (y * 40 + x) * 4 + 4)];
    expect(furthestApart(Uint8Array.from(at(12, 12)), Uint8Array.of(0xb0, 0x30, 0x2a, 255))).toBeLessThanOrEqual(3);
    const ground = name === 'patch.avif' ? 255 : 0;
    expect(at(4, 4)[3]).toBe(ground);
    expect(at(25, 20)[3]).toBe(ground);
  });

  it('names HEIC as what cannot be read', async () => {
    expect(await fileKind(readFileSync('tests/data/formats/patch.heic'))).toEqual({ kind: 'heic' });
  });

  it.each([
    ['patch.webp', 'image/webp'],
    ['patch.tif', 'image/tiff'],
    ['patch-16.tif', 'image/tiff'],
    ['patch.avif', 'image/avif'],
    ['moving.gif', 'image/gif'],
  ] as const)('refuses %s wherever it is cut off', async (name, mediaType: ArtMediaType) => {
    const bytes = readFileSync(`tests/data/formats/${name}`);
    for (const share of [0.2, 0.5]) {
      const cut = scratch.keep(bytes.subarray(0, Math.floor(bytes.length * share)));
      expect(await unpackArt(cut, mediaType)).toEqual({ ok: false, reason: 'damaged' });
    }
  });
});

function furthestApart(ours: Uint8Array, theirs: Uint8Array): number {
  expect(ours.length).toBe(theirs.length);
  let furthest = 0;
  for (let at = 0; at < ours.length; at += 4) {
    const isClear = (ours[at + 3] ?? 0) === 0 && (theirs[at + 3] ?? 0) === 0;
    for (let channel = 0; channel < 4 && !isClear; channel += 1) {
      furthest = Math.max(furthest, Math.abs((ours[at + channel] ?? 0) - (theirs[at + channel] ?? 0)));
    }
  }
  return furthest;
}
