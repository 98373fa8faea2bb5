import { copyOf, type MendPicture, wholePixels } from './mend-picture';

/** Pixels with at least this alpha, 1 to 255, become solid in their own colour; the others clear. */
export function hardenEdge(picture: MendPicture, alpha: number): MendPicture {
  const hardened = copyOf(picture);
  const { rgba } = hardened;
  const pixels = wholePixels(hardened);
  for (let index = 0; index < pixels.length; index += 1) {
    if ((rgba[index * 4 + 3] ?? 0) >= alpha) rgba[index * 4 + 3] = 255;
    else pixels[index] = 0;
  }
  return hardened;
}

/** Where no pixel is half clear, the middle: it changes nothing. */
const MIDDLE_ALPHA = 128;

/**
 * The alpha at which clear and solid fall apart best: the threshold with the greatest variance between its two classes.
 * Source: N. Otsu, IEEE Transactions on Systems, Man, and Cybernetics 9 (1979), equation 18. Of thresholds that are equally
 * good, as in a picture of solid and clear pixels alone, the middle one.
 */
export function suggestedHardenAlpha({ rgba }: MendPicture): number {
  const counts = new Float64Array(256);
  for (let at = 3; at < rgba.length; at += 4) {
    const alpha = rgba[at] ?? 0;
    counts[alpha] = (counts[alpha] ?? 0) + 1;
  }
  const total = rgba.length / 4;
  let sum = 0;
  for (const [alpha, count] of counts.entries()) sum += alpha * count;
  let [below, sumBelow, best, first, last] = [0, 0, 0, MIDDLE_ALPHA, MIDDLE_ALPHA];
  for (let alpha = 1; alpha <= 255; alpha += 1) {
    const count = counts[alpha - 1] ?? 0;
    below += count;
    sumBelow += (alpha - 1) * count;
    if (below === 0 || below === total) continue;
    const apart = sumBelow / below - (sum - sumBelow) / (total - below);
    const between = below * (total - below) * apart * apart;
    if (between > best * (1 + 1e-12)) [best, first] = [between, alpha];
    if (between >= best * (1 - 1e-12)) last = alpha;
  }
  return Math.round((first + last) / 2);
}
