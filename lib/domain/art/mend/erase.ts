import type { Spot } from '../art-facts';
import { boxOnPicture, copyOf, type MendPicture, wholePixels } from './mend-picture';

/** The picture with everything in the boxes clear, px of the picture. The picture keeps its size. */
export function erase(picture: MendPicture, boxes: readonly Spot[]): MendPicture {
  const erased = copyOf(picture);
  const pixels = wholePixels(erased);
  for (const box of boxes) {
    const part = boxOnPicture(box, picture);
    if (!part) continue;
    for (let y = part.y; y < part.y + part.height; y += 1) {
      pixels.fill(0, y * picture.widthPx + part.x, y * picture.widthPx + part.x + part.width);
    }
  }
  return erased;
}
