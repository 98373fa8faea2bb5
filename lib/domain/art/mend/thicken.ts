import { INK_ALPHA } from '../ink';
import { squaredDistances } from './distance';
import { clearPicture, inkBoxOf, type MendPicture, wholePixels } from './mend-picture';

/**
 * The picture with its ink grown by so many pixels on every side, in the one colour `hex`: a pixel is covered as far as the
 * moved edge reaches into it. Half-clear pixels are read as edges: one that is covered by a half has the edge through its
 * middle. The picture becomes larger where ink would otherwise grow over its side.
 */
export function thicken(picture: MendPicture, byPx: number, rgb: readonly [number, number, number]): MendPicture {
  const grown = withRoom(picture, Math.ceil(byPx));
  const { rgba, widthPx, heightPx } = grown;
  const from = new Float32Array(widthPx * heightPx);
  for (let index = 0; index < from.length; index += 1) {
    const alpha = rgba[index * 4 + 3] ?? 0;
    from[index] = alpha < INK_ALPHA ? Number.POSITIVE_INFINITY : edgeWeight(alpha / 255, byPx);
  }
  squaredDistances(from, widthPx, heightPx, byPx + 2);
  for (let index = 0; index < from.length; index += 1) {
    const distance = Math.sqrt(from[index] ?? Number.POSITIVE_INFINITY);
    const alpha = Math.round(255 * Math.min(1, byPx + 1 - distance));
    const at = index * 4;
    const had = rgba[at + 3] ?? 0;
    if (alpha <= had) continue;
    if (had < INK_ALPHA) [rgba[at], rgba[at + 1], rgba[at + 2]] = rgb;
    rgba[at + 3] = alpha;
  }
  return grown;
}

/**
 * A pixel that is covered by a share of less than 1 has its edge so much nearer. Its distance d counts as d + 1 − share; as a
 * weight on the square of d that is exact at d = byPx, where it matters.
 */
function edgeWeight(share: number, byPx: number): number {
  const missing = 1 - share;
  return 2 * byPx * missing + missing * missing;
}

/** A copy with as much clear room added on each side as ink needs to grow by so much. */
function withRoom(picture: MendPicture, roomPx: number): MendPicture {
  const { widthPx, heightPx } = picture;
  const box = inkBoxOf(picture) ?? { x: 0, y: 0, width: widthPx, height: heightPx };
  const left = Math.max(0, roomPx - box.x);
  const top = Math.max(0, roomPx - box.y);
  const right = Math.max(0, box.x + box.width + roomPx - widthPx);
  const bottom = Math.max(0, box.y + box.height + roomPx - heightPx);
  const larger = clearPicture(left + widthPx + right, top + heightPx + bottom);
  const [from, onto] = [wholePixels(picture), wholePixels(larger)];
  for (let y = 0; y < heightPx; y += 1) {
    onto.set(from.subarray(y * widthPx, (y + 1) * widthPx), (y + top) * larger.widthPx + left);
  }
  return larger;
}
