import { crc32 } from 'node:zlib';

/** Signature and IHDR, the chunk every PNG begins with (PNG Third Edition, 5.6 and 11.2.1). */
const AFTER_HEADER = 8 + 25;

/** Rendering intent "relative colorimetric" (PNG Third Edition, 11.3.2.5, table 18). */
const RELATIVE_COLORIMETRIC = 1;

/** The PNG with a chunk that says its colours are sRGB. The pixels were sRGB before; now the file says so. */
export function withDeclaredSrgb(png: Uint8Array): Uint8Array {
  const chunk = new Uint8Array(13);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 1);
  chunk.set(new TextEncoder().encode('sRGB'), 4);
  chunk[8] = RELATIVE_COLORIMETRIC;
  view.setUint32(9, crc32(chunk.subarray(4, 9)));
  const declared = new Uint8Array(png.length + chunk.length);
  declared.set(png.subarray(0, AFTER_HEADER));
  declared.set(chunk, AFTER_HEADER);
  declared.set(png.subarray(AFTER_HEADER), AFTER_HEADER + chunk.length);
  return declared;
}
