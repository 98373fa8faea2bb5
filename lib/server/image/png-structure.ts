import { crc32, createInflate } from 'node:zlib';

/** What a PNG's own chunks say of it, or how the file is broken. */
export type PngStructure =
  | { ok: true; widthPx: number; heightPx: number; animated: boolean }
  | { ok: false; reason: 'damaged' };

type Chunk = { readonly type: string; readonly data: Uint8Array };
type Header = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bitsPerPixel: number;
  readonly colourType: number;
  readonly interlaced: boolean;
};

const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const damaged = { ok: false, reason: 'damaged' } as const;

/** Channels and allowed bit depths by colour type (PNG Third Edition, 11.2.1, table 12). */
const COLOUR_TYPES: Record<number, { channels: number; depths: readonly number[] }> = {
  0: { channels: 1, depths: [1, 2, 4, 8, 16] },
  2: { channels: 3, depths: [8, 16] },
  3: { channels: 1, depths: [1, 2, 4, 8] },
  4: { channels: 2, depths: [8, 16] },
  6: { channels: 4, depths: [8, 16] },
};

/**
 * Walks a PNG from its signature to IEND: every chunk whole and with its checksum, the header first, the palette where
 * one is needed, the picture data in one run (PNG Third Edition, 5 and 11). Decoders let most of these faults pass.
 */
export function pngStructure(bytes: Uint8Array): PngStructure {
  const chunks = readChunks(bytes);
  const header = chunks?.[0] && readHeader(chunks[0]);
  if (!chunks || !header || !chunksBelongTogether(chunks, header)) return damaged;
  return {
    ok: true,
    widthPx: header.widthPx,
    heightPx: header.heightPx,
    animated: chunks.some(({ type }) => type === 'acTL'),
  };
}

/** Whether the picture data of a PNG with a sound structure unpacks to exactly as many bytes as its header promises. */
export async function pngDataIsWhole(bytes: Uint8Array): Promise<boolean> {
  const chunks = readChunks(bytes);
  const header = chunks?.[0] && readHeader(chunks[0]);
  if (!chunks || !header) return false;
  const inflate = createInflate();
  for (const { type, data } of chunks) if (type === 'IDAT') inflate.write(data);
  inflate.end();
  const expected = unpackedBytes(header);
  let unpacked = 0;
  try {
    for await (const part of inflate as AsyncIterable<Uint8Array>) {
      unpacked += part.byteLength;
      if (unpacked > expected) break;
    }
  } catch {
    return false;
  }
  return unpacked === expected;
}

function readChunks(bytes: Uint8Array): Chunk[] | null {
  if (SIGNATURE.some((byte, index) => bytes[index] !== byte)) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const chunks: Chunk[] = [];
  let at = SIGNATURE.length;
  while (at + 12 <= bytes.length) {
    const length = view.getUint32(at);
    const end = at + 12 + length;
    if (end > bytes.length) return null;
    if (crc32(bytes.subarray(at + 4, end - 4)) !== view.getUint32(end - 4)) return null;
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    chunks.push({ type, data: bytes.subarray(at + 8, end - 4) });
    if (type === 'IEND') return chunks;
    at = end;
  }
  return null;
}

function readHeader({ type, data }: Chunk): Header | null {
  if (type !== 'IHDR' || data.length !== 13) return null;
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const [widthPx, heightPx] = [view.getUint32(0), view.getUint32(4)];
  const [depth, colourType, compression, filter, interlace] = [8, 9, 10, 11, 12].map((at) => view.getUint8(at));
  const colour = COLOUR_TYPES[colourType ?? -1];
  if (!colour?.depths.includes(depth ?? 0)) return null;
  if (widthPx === 0 || heightPx === 0 || compression !== 0 || filter !== 0 || (interlace ?? 2) > 1) return null;
  return {
    widthPx,
    heightPx,
    bitsPerPixel: colour.channels * (depth ?? 0),
    colourType: colourType ?? 0,
    interlaced: interlace === 1,
  };
}

function chunksBelongTogether(chunks: readonly Chunk[], { colourType }: Header): boolean {
  const types = chunks.map(({ type }) => type);
  const firstData = types.indexOf('IDAT');
  const lastData = types.lastIndexOf('IDAT');
  if (firstData < 0 || types.lastIndexOf('IHDR') > 0) return false;
  if (types.slice(firstData, lastData).some((type) => type !== 'IDAT')) return false;
  const palette = chunks.findIndex(({ type }) => type === 'PLTE');
  if (colourType !== 3) return true;
  const entries = (chunks[palette]?.data.length ?? 0) / 3;
  return palette > 0 && palette < firstData && Number.isInteger(entries) && entries >= 1 && entries <= 256;
}

/** Start and step of the seven passes of an interlaced PNG: x, y, step x, step y (PNG Third Edition, 8.1). */
const PASSES = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

function unpackedBytes({ widthPx, heightPx, bitsPerPixel, interlaced }: Header): number {
  const rows = (columns: number, lines: number) =>
    columns > 0 ? lines * (1 + Math.ceil((columns * bitsPerPixel) / 8)) : 0;
  if (!interlaced) return rows(widthPx, heightPx);
  return PASSES.reduce(
    (sum, [x, y, stepX, stepY]) =>
      sum + rows(Math.max(0, Math.ceil((widthPx - x) / stepX)), Math.max(0, Math.ceil((heightPx - y) / stepY))),
    0,
  );
}
