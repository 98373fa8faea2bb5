/** What a JPEG's own markers say of it, or how the file is broken. */
export type JpegStructure =
  | { ok: true; widthPx: number; heightPx: number /** Colours a pixel has. */; components: number }
  | { ok: false; reason: 'damaged' };

const damaged = { ok: false, reason: 'damaged' } as const;

/** Markers (ITU-T T.81, table B.1). */
const START_OF_IMAGE = 0xd8;
const END_OF_IMAGE = 0xd9;
const START_OF_SCAN = 0xda;
const TEMPORARY = 0x01;
const PROGRESSIVE = new Set([0xc2, 0xca]);

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
  const scans: Scan[] = [];
  let segment = segmentAt(bytes, 2);
  while (segment && segment.marker !== END_OF_IMAGE) {
    if (isFrameHeader(segment.marker)) frame = readFrame(bytes, segment);
    if (segment.marker === START_OF_SCAN) scans.push(readScan(bytes, segment.from));
    segment = segmentAt(bytes, segment.end);
  }
  if (!segment || !frame || scans.length === 0) return damaged;
  if (frame.progressive && !isRefinedToTheEnd(frame, scans)) return damaged;
  const { widthPx, heightPx, components } = frame;
  return { ok: true, widthPx, heightPx, components: components.length };
}

type Frame = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly components: readonly number[];
  readonly progressive: boolean;
};

/** Which coefficients of which components a scan brings, and how many low bits it still leaves out (T.81, B.2.3). */
type Scan = {
  readonly components: readonly number[];
  readonly first: number;
  readonly last: number;
  readonly bitsLeft: number;
};

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

function readFrame(bytes: Uint8Array, { marker, from }: Segment): Frame | null {
  const [heightPx, widthPx] = [word(bytes, from + 3), word(bytes, from + 5)];
  if (widthPx === 0 || heightPx === 0) return null;
  const count = bytes[from + 7] ?? 0;
  const components = Array.from({ length: count }, (_, index) => bytes[from + 8 + 3 * index] ?? 0);
  return { widthPx, heightPx, components, progressive: PROGRESSIVE.has(marker) };
}

function readScan(bytes: Uint8Array, from: number): Scan {
  const count = bytes[from + 2] ?? 0;
  const after = from + 3 + 2 * count;
  return {
    components: Array.from({ length: count }, (_, index) => bytes[from + 3 + 2 * index] ?? 0),
    first: bytes[after] ?? 0,
    last: bytes[after + 1] ?? 0,
    bitsLeft: (bytes[after + 2] ?? 0) & 0x0f,
  };
}

/** Coefficients of a block (T.81, A.3.3). */
const COEFFICIENTS = 64;

/**
 * Whether the scans of a progressive picture brought the last bit of every coefficient. One that was cut off between two
 * scans and closed again is a sound file of a blurred picture (T.81, annex G).
 */
function isRefinedToTheEnd({ components }: Frame, scans: readonly Scan[]): boolean {
  return components.every((component) => {
    const whole = scans.filter((scan) => scan.bitsLeft === 0 && scan.components.includes(component));
    return Array.from({ length: COEFFICIENTS }, (_, index) => index).every((index) =>
      whole.some(({ first, last }) => first <= index && index <= last),
    );
  });
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
