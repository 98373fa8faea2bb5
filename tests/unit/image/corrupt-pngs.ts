import { crc32 } from 'node:zlib';

/** PNG Third Edition, 5.2 and 11.2.1: signature, then IHDR with its length, type, 13 bytes and checksum. */
const IHDR = 8;
const DEPTH = IHDR + 8 + 8;
const COLOUR_TYPE = DEPTH + 1;

/** The faults of PngSuite's corrupt files, each put into a sound file: what is wrong, and the bytes. */
export function corruptPngs(sound: Uint8Array): [string, Uint8Array][] {
  const changed = (at: number, value: number) => {
    const bytes = Uint8Array.from(sound);
    bytes[at] = value;
    return bytes;
  };
  const header = (at: number, value: number) => withChecksum(changed(at, value), IHDR);
  return [
    ['xs1: the signature’s first byte without its top bit', changed(0, 0x09)],
    ['xs2: another letter in the signature', changed(1, 0x45)],
    ['xs4: another letter in the signature', changed(3, 0x43)],
    ['xs7: a space for its line end', changed(6, 0x20)],
    ['xcr: carriage returns added', withAdded(sound, 0x0d, 0x0a, 0x0d)],
    ['xlf: line feeds added', withAdded(sound, 0x0a, 0x0a, 0x0a)],
    ['xhd: a wrong checksum of the header', changed(IHDR + 8 + 13, (sound[IHDR + 8 + 13] ?? 0) ^ 0xff)],
    ['xcs: a wrong checksum of the data', wrongDataChecksum(sound)],
    ['xdt: no data at all', withoutData(sound)],
    ['xc1: colour type 1', header(COLOUR_TYPE, 1)],
    ['xc9: colour type 9', header(COLOUR_TYPE, 9)],
    ['xd0: no bits a pixel', header(DEPTH, 0)],
    ['xd3: three bits a pixel', header(DEPTH, 3)],
    ['xd9: 99 bits a pixel', header(DEPTH, 99)],
  ];
}

function withChecksum(bytes: Uint8Array, chunkAt: number): Uint8Array {
  const view = new DataView(bytes.buffer);
  const end = chunkAt + 8 + view.getUint32(chunkAt);
  view.setUint32(end, crc32(bytes.subarray(chunkAt + 4, end)));
  return bytes;
}

/** As a transfer in text mode leaves a file. */
function withAdded(sound: Uint8Array, byte: number, before: number, added: number): Uint8Array {
  return Uint8Array.from([...sound].flatMap((each) => (each === byte || each === before ? [added, each] : [each])));
}

function dataAt(sound: Uint8Array): number {
  return Buffer.from(sound).indexOf('IDAT', 0, 'latin1') - 4;
}

function wrongDataChecksum(sound: Uint8Array): Uint8Array {
  const bytes = Uint8Array.from(sound);
  const at = dataAt(bytes);
  const checksum = at + 8 + new DataView(bytes.buffer).getUint32(at);
  bytes[checksum] = (bytes[checksum] ?? 0) ^ 0xff;
  return bytes;
}

function withoutData(sound: Uint8Array): Uint8Array {
  const at = dataAt(sound);
  const length = new DataView(sound.buffer, sound.byteOffset).getUint32(at);
  return Uint8Array.from([...sound.subarray(0, at), ...sound.subarray(at + 12 + length)]);
}
