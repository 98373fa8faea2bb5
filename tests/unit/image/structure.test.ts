import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { jpegStructure } from '@/lib/server/image/jpeg-structure';
import { pngDataIsWhole, pngStructure } from '@/lib/server/image/png-structure';

// Sources: PngSuite, and the test data of Go 1.19 (tests/data/SOURCES.md).
const pngFolder = 'tests/data/png';
const jpegFolder = 'tests/data/jpeg';
const sound = readdirSync(pngFolder).filter((name) => name.endsWith('.png') && !name.startsWith('invalid-'));
const jpegs = readdirSync(jpegFolder).filter((name) => /\.jpe?g$/.test(name) && !name.includes('truncated'));

const png = (name: string) => new Uint8Array(readFileSync(join(pngFolder, name)));
const jpeg = (name: string) => new Uint8Array(readFileSync(join(jpegFolder, name)));

function chunk(type: string, data: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(12 + data.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, data.length);
  bytes.set(new TextEncoder().encode(type), 4);
  bytes.set(data, 8);
  view.setUint32(8 + data.length, crc32(bytes.subarray(4, 8 + data.length)));
  return bytes;
}

/** A grey PNG of 4 × 4 px whose picture data unpacks to `unpacked` bytes: 4 × 5 is what its header promises. */
function greyPng(unpacked: number, ...extra: Uint8Array[]): Uint8Array {
  const header = new Uint8Array([0, 0, 0, 4, 0, 0, 0, 4, 8, 0, 0, 0, 0]);
  const signature = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const data = chunk('IDAT', deflateSync(new Uint8Array(unpacked)));
  return Buffer.concat([signature, chunk('IHDR', header), ...extra, data, chunk('IEND', new Uint8Array())]);
}

describe('the structure of a PNG', () => {
  it.each(sound)('is found sound in %s', async (name) => {
    expect(pngStructure(png(name))).toMatchObject({ ok: true, animated: false });
    expect(await pngDataIsWhole(png(name))).toBe(true);
  });

  it.each(['invalid-crc32.png', 'invalid-noend.png', 'invalid-trunc.png'])('is found broken in %s', (name) => {
    expect(pngStructure(png(name))).toEqual({ ok: false, reason: 'damaged' });
  });

  it('is found broken where the packed data is, though every chunk is whole', async () => {
    expect(pngStructure(png('invalid-zlib.png')).ok).toBe(true);
    expect(await pngDataIsWhole(png('invalid-zlib.png'))).toBe(false);
  });

  it.each([
    ['exactly enough', 20, true],
    ['too little', 19, false],
    ['too much', 21, false],
  ])('with %s picture data is whole: %s bytes, %s', async (_, unpacked, whole) => {
    expect(pngStructure(greyPng(unpacked)).ok).toBe(true);
    expect(await pngDataIsWhole(greyPng(unpacked))).toBe(whole);
  });

  it('is broken wherever the file is cut off', () => {
    const whole = png('basn6a08.png');
    for (let length = 0; length < whole.length; length += 1) {
      expect(pngStructure(whole.subarray(0, length)).ok, `first ${length} bytes`).toBe(false);
    }
  });

  it('is broken whichever byte is changed, but for one that no checksum covers', () => {
    const whole = png('basn3p04.png');
    const passed = Array.from(whole, (byte, index) => {
      const changed = whole.slice();
      changed[index] = byte ^ 0x10;
      return pngStructure(changed).ok;
    });
    expect(passed.filter(Boolean)).toEqual([]);
  });

  it('says that a PNG is animated', () => {
    expect(pngStructure(greyPng(20, chunk('acTL', new Uint8Array(8))))).toMatchObject({ ok: true, animated: true });
  });

  it('states the size in the header', () => {
    expect(pngStructure(png('basn2c08.png'))).toMatchObject({ widthPx: 32, heightPx: 32 });
  });
});

describe('the structure of a JPEG', () => {
  it.each(jpegs)('is found sound in %s', (name) => {
    expect(jpegStructure(jpeg(name))).toMatchObject({ ok: true });
  });

  it('is found broken where the file was cut off', () => {
    expect(jpegStructure(jpeg('video-001.progressive.truncated.jpeg'))).toEqual({ ok: false, reason: 'damaged' });
    const whole = jpeg('video-001.jpeg');
    for (let length = 0; length < whole.length; length += 97) {
      expect(jpegStructure(whole.subarray(0, length)).ok, `first ${length} bytes`).toBe(false);
    }
    expect(jpegStructure(whole.subarray(0, whole.length - 1)).ok).toBe(false);
  });

  it('does not mind what a camera put after the end', () => {
    expect(jpegStructure(Buffer.concat([jpeg('video-001.jpeg'), Buffer.from('preview')])).ok).toBe(true);
  });

  it('states size and inks', () => {
    expect(jpegStructure(jpeg('video-001.cmyk.jpeg'))).toMatchObject({ widthPx: 150, heightPx: 103, components: 4 });
    expect(jpegStructure(jpeg('video-005.gray.jpeg'))).toMatchObject({ widthPx: 150, heightPx: 103, components: 1 });
  });

  it('is not found in what only begins like one', () => {
    expect(jpegStructure(new Uint8Array([0xff, 0xd8])).ok).toBe(false);
    expect(jpegStructure(new Uint8Array([0xff, 0xd8, 0xff, 0xd9])).ok).toBe(false);
    expect(jpegStructure(new TextEncoder().encode('not a picture')).ok).toBe(false);
  });
});
