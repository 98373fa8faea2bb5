import type { Spot } from '../art-facts';
import { INK_ALPHA } from '../ink';

/** A picture's pixels row by row, red, green, blue and alpha, not premultiplied. A mend never writes into what it is given. */
export type MendPicture = {
  readonly rgba: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
};

/** A picture with every pixel clear. */
export function clearPicture(widthPx: number, heightPx: number): MendPicture {
  return { rgba: new Uint8Array(widthPx * heightPx * 4), widthPx, heightPx };
}

/** The same pixels in memory of their own. */
export function copyOf({ rgba, widthPx, heightPx }: MendPicture): MendPicture {
  return { rgba: new Uint8Array(rgba), widthPx, heightPx };
}

/** Pixels as whole 32-bit numbers, to be moved and compared one at a time; the order of bytes is the machine's. */
export function wholePixels({ rgba }: MendPicture): Uint32Array {
  if (rgba.byteOffset % 4 === 0) return new Uint32Array(rgba.buffer, rgba.byteOffset, rgba.byteLength / 4);
  // Bytes from a decoder may begin anywhere; what a mend writes into always begins where a number can.
  return new Uint32Array(rgba.slice().buffer);
}

/** The part of a box that lies on the picture; null where none does. */
export function boxOnPicture(box: Spot, { widthPx, heightPx }: MendPicture): Spot | null {
  const right = Math.min(widthPx, box.x + box.width);
  const bottom = Math.min(heightPx, box.y + box.height);
  if (right <= box.x || bottom <= box.y) return null;
  return { x: box.x, y: box.y, width: right - box.x, height: bottom - box.y };
}

/** The box round the pixels that print; null where none does. */
export function inkBoxOf({ rgba, widthPx, heightPx }: MendPicture): Spot | null {
  let [left, right, top, bottom] = [widthPx, 0, heightPx, 0];
  for (let y = 0; y < heightPx; y += 1) {
    const row = y * widthPx * 4 + 3;
    let first = 0;
    while (first < widthPx && (rgba[row + first * 4] ?? 0) < INK_ALPHA) first += 1;
    if (first === widthPx) continue;
    let last = widthPx - 1;
    while ((rgba[row + last * 4] ?? 0) < INK_ALPHA) last -= 1;
    left = Math.min(left, first);
    right = Math.max(right, last + 1);
    top = Math.min(top, y);
    bottom = y + 1;
  }
  return bottom === 0 ? null : { x: left, y: top, width: right - left, height: bottom - top };
}

/** Red, green and blue of `#RRGGBB`, 0 to 255. */
export function rgbOfHex(hex: string): readonly [red: number, green: number, blue: number] {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new Error(`rgbOfHex: ${hex} is not a colour`);
  const rgb = Number.parseInt(hex.slice(1), 16);
  return [rgb >> 16, (rgb >> 8) & 255, rgb & 255];
}
