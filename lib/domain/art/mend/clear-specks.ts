import { joinedInk } from './joined-ink';
import { copyOf, type MendPicture, wholePixels } from './mend-picture';

/**
 * The picture without pieces of ink smaller than so many pixels. What is fainter than ink around a piece goes with it; ink
 * that stays keeps every pixel.
 */
export function clearSpecks(picture: MendPicture, smallerThanPx: number): MendPicture {
  const { widthPx, heightPx } = picture;
  const ink = joinedInk(picture);
  const cleared = copyOf(picture);
  const pixels = wholePixels(cleared);
  for (let run = 0; run < ink.runCount; run += 1) {
    if (ink.piecePx(run) >= smallerThanPx) continue;
    const { y, from, to } = ink.runAt(run);
    for (let row = Math.max(0, y - 1); row <= Math.min(heightPx - 1, y + 1); row += 1) {
      pixels.fill(0, row * widthPx + Math.max(0, from - 1), row * widthPx + Math.min(widthPx, to + 1));
    }
  }
  return cleared;
}
