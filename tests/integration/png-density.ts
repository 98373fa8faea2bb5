/** What a PNG's pHYs chunk says (PNG Third Edition, 11.3.4.3), or null where it has none. */
export function pngDensity(png: Uint8Array): { x: number; y: number; unit: number } | null {
  const bytes = Buffer.from(png);
  const at = bytes.indexOf('pHYs', 8, 'latin1');
  if (at < 0) return null;
  return { x: bytes.readUInt32BE(at + 4), y: bytes.readUInt32BE(at + 8), unit: bytes.readUInt8(at + 12) };
}
