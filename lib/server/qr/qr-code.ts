import QRCode from 'qrcode';

/** Light squares around a code that readers need. Source: ISO/IEC 18004, quiet zone of four modules (from memory). */
const QUIET_MODULES = 4;

/** A QR code as one SVG path in squares of one unit, quiet zone included. */
export type QrCode = { readonly size: number; readonly d: string };

/** The QR code of a text, at a level that survives a scratched screen (M, about 15 %). */
export function qrCode(text: string): QrCode {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: 'M' });
  const runs: string[] = [];
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      let length = 0;
      while (column + length < modules.size && modules.get(row, column + length)) length += 1;
      if (length === 0) continue;
      runs.push(`M${column + QUIET_MODULES} ${row + QUIET_MODULES}h${length}v1h-${length}z`);
      column += length;
    }
  }
  return { size: modules.size + 2 * QUIET_MODULES, d: runs.join('') };
}
