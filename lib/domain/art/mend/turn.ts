import { clearPicture, copyOf, type MendPicture, wholePixels } from './mend-picture';

/** The picture turned clockwise by so many quarters; every pixel keeps its value. */
export function turn(picture: MendPicture, quarters: 1 | 2 | 3): MendPicture {
  const { widthPx, heightPx } = picture;
  if (quarters === 2) {
    const turned = copyOf(picture);
    wholePixels(turned).reverse();
    return turned;
  }
  const turned = clearPicture(heightPx, widthPx);
  const [from, onto] = [wholePixels(picture), wholePixels(turned)];
  for (let y = 0; y < heightPx; y += 1) {
    // A row becomes a column: the topmost the rightmost one when turned clockwise, the leftmost one the other way.
    let at = quarters === 1 ? heightPx - 1 - y : (widthPx - 1) * heightPx + y;
    const step = quarters === 1 ? heightPx : -heightPx;
    for (let x = 0; x < widthPx; x += 1) {
      onto[at] = from[y * widthPx + x] ?? 0;
      at += step;
    }
  }
  return turned;
}
