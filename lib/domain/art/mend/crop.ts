import type { Spot } from '../art-facts';
import { boxOnPicture, clearPicture, inkBoxOf, type MendPicture, wholePixels } from './mend-picture';

/** Only what lies in the box, px of the picture; null where the box lies beside the picture. */
export function crop(picture: MendPicture, box: Spot): MendPicture | null {
  const part = boxOnPicture(box, picture);
  if (!part) return null;
  if (part.width === picture.widthPx && part.height === picture.heightPx) return picture;
  const cropped = clearPicture(part.width, part.height);
  const [from, onto] = [wholePixels(picture), wholePixels(cropped)];
  for (let y = 0; y < part.height; y += 1) {
    const start = (part.y + y) * picture.widthPx + part.x;
    onto.set(from.subarray(start, start + part.width), y * part.width);
  }
  return cropped;
}

/** The picture without its empty margin: what lies in the box round its ink. Null where nothing prints. */
export function trim(picture: MendPicture): MendPicture | null {
  const box = inkBoxOf(picture);
  return box && crop(picture, box);
}
