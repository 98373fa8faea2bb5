/** What a JPEG's own markers say of it, or how the file is broken. */
export type JpegStructure =
  | { ok: true; widthPx: number; heightPx: number; components: number }
  | { ok: false; reason: 'damaged' };

const damaged = { ok: false, reason: 'damaged' } as const;

/** Markers (ITU-T T.81, table B.1). */
const START_OF_IMAGE = 0xd8;
const END_OF_IMAGE = 0xd9;
const START_OF_SCAN = 0xda;
const TEMPORARY = 0x01;

/** Frame headers: SOF0 to SOF15 without DHT (C4), JPG (C8) and DAC (CC). */
function isFrameHeader(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

function isRestart(marker: number): boolean {
  return marker >= 0xd0 && marker <= 0xd7;
}

/**
 * Walks a JPEG from SOI through every segment and scan to EOI (ITU-T T.81, annex B). A file that was cut off has no EOI;
 * decoders fill the rest with grey and say nothing. Bytes after EOI are allowed: cameras put previews there.
 */
export function jpegStructure(bytes: Uint8Array): JpegStructure {
  if (bytes[0] !== 0xff || bytes[1] !== START_OF_IMAGE) return damaged;
  let frame: Frame | null = null;
  let scans = 0;
  let segment = segmentAt(bytes, 2);
  while (segment && segment.marker !== END_OF_IMAGE) {
    if (isFrameHeader(segment.marker)) frame = readFrame(bytes, segment.from);
    if (segment.marker === START_OF_SCAN) scans += 1;
    segment = segmentAt(bytes, segment.end);
  }
  return segment && frame && scans > 0 ? { ok: true, ...frame } : damaged;
}

type Frame = { readonly widthPx: number; readonly heightPx: number; readonly components: number };

/** A marker with what belongs to it: from its length field to the next marker; a scan's packed data included. */
type Segment = { readonly marker: number; readonly from: number; readonly end: number };

/** The segment that starts at a place, or null where none does or it runs past the end of the file. */
function segmentAt(bytes: Uint8Array, at: number): Segment | null {
  let from = at;
  while (bytes[from] === 0xff && bytes[from + 1] === 0xff) from += 1;
  const marker = bytes[from + 1];
  if (bytes[from] !== 0xff || marker === undefined) return null;
  from += 2;
  if (marker === END_OF_IMAGE || marker === TEMPORARY || isRestart(marker)) return { marker, from, end: from };
  const length = word(bytes, from);
  const end = from + length;
  if (length < 2 || end > bytes.length) return null;
  return { marker, from, end: marker === START_OF_SCAN ? endOfScan(bytes, end) : end };
}

function readFrame(bytes: Uint8Array, from: number): Frame | null {
  const [heightPx, widthPx] = [word(bytes, from + 3), word(bytes, from + 5)];
  return widthPx > 0 && heightPx > 0 ? { widthPx, heightPx, components: bytes[from + 7] ?? 0 } : null;
}

function word(bytes: Uint8Array, at: number): number {
  return ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
}

/** The next marker after packed picture data: FF that is neither stuffed (FF 00), a restart, nor fill. */
function endOfScan(bytes: Uint8Array, from: number): number {
  let at = bytes.indexOf(0xff, from);
  while (at >= 0 && at + 1 < bytes.length) {
    const next = bytes[at + 1] ?? 0;
    if (next !== 0x00 && next !== 0xff && !isRestart(next)) return at;
    at = bytes.indexOf(0xff, at + (next === 0xff ? 1 : 2));
  }
  return bytes.length;
}
