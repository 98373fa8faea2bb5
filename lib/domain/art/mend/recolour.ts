import { copyOf, type MendPicture, rgbOfHex } from './mend-picture';

/** The picture with all ink in one colour, `#RRGGBB`; how clear each pixel is stays. */
export function recolour(picture: MendPicture, hex: string): MendPicture {
  const [red, green, blue] = rgbOfHex(hex);
  const recoloured = copyOf(picture);
  const { rgba } = recoloured;
  for (let at = 0; at < rgba.length; at += 4) {
    if (rgba[at + 3] === 0) continue;
    rgba[at] = red;
    rgba[at + 1] = green;
    rgba[at + 2] = blue;
  }
  return recoloured;
}
