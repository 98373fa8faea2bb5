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
  const distances = new Float32Array(widthPx * heightPx);
  const isFine = byPx <= MOST_FINE_PX;
  for (let index = 0; index < distances.length; index += 1) {
    const alpha = rgba[index * 4 + 3] ?? 0;
    const isEdge = alpha >= INK_ALPHA && alpha < 255;
    if (isEdge && !isFine) distances[index] = weightOf(missingPx(grown, index), byPx);
    else if (alpha < 255) distances[index] = Number.POSITIVE_INFINITY;
  }
  squaredDistances(distances, widthPx, heightPx, byPx + 2);
  for (let index = 0; index < distances.length; index += 1) distances[index] = Math.sqrt(distances[index] ?? 0);
  if (isFine) nearerToEdges(grown, distances, byPx);
  for (let index = 0; index < distances.length; index += 1) {
    const alpha = Math.round(255 * Math.min(1, byPx + 1 - (distances[index] ?? 0)));
    const at = index * 4;
    const had = rgba[at + 3] ?? 0;
    if (alpha <= had) continue;
    if (had < INK_ALPHA) [rgba[at], rgba[at + 1], rgba[at + 2]] = rgb;
    rgba[at + 3] = alpha;
  }
  return grown;
}

/** Up to here each pixel of an edge is measured from by itself; further out there are too many, and less depends on it. */
const MOST_FINE_PX = 8;

/** Shortens distances to where half-covered pixels have their edge. */
function nearerToEdges(picture: MendPicture, distances: Float32Array, byPx: number): void {
  const { rgba, widthPx, heightPx } = picture;
  const reach = Math.ceil(byPx + 1);
  for (let index = 0; index < distances.length; index += 1) {
    const alpha = rgba[index * 4 + 3] ?? 0;
    if (alpha < INK_ALPHA || alpha === 255) continue;
    const missing = missingPx(picture, index);
    const x = index % widthPx;
    const y = (index - x) / widthPx;
    for (let row = Math.max(0, y - reach); row <= Math.min(heightPx - 1, y + reach); row += 1) {
      for (let column = Math.max(0, x - reach); column <= Math.min(widthPx - 1, x + reach); column += 1) {
        const at = row * widthPx + column;
        const away = Math.sqrt((row - y) ** 2 + (column - x) ** 2) + missing;
        if (away < (distances[at] ?? 0)) distances[at] = away;
      }
    }
  }
}

/**
 * A pixel whose edge lies so much further in than that of a full pixel has all distances longer by it. As a weight on the
 * square of a distance that is exact at `byPx`, where it matters.
 */
function weightOf(missing: number, byPx: number): number {
  return 2 * byPx * missing + missing * missing;
}

/**
 * How much further in a half-covered pixel's edge lies than half a pixel out, px: from its coverage and from which way the
 * edge runs, read off the pixels around. Source: S. Gustavson and R. Strand, "Anti-aliased Euclidean distance transform",
 * Pattern Recognition Letters 32 (2011), section 3.
 */
function missingPx({ rgba, widthPx, heightPx }: MendPicture, index: number): number {
  const x = index % widthPx;
  const y = (index - x) / widthPx;
  const cover = (column: number, row: number) => {
    const isBeside = column < 0 || row < 0 || column >= widthPx || row >= heightPx;
    return isBeside ? 0 : (rgba[(row * widthPx + column) * 4 + 3] ?? 0) / 255;
  };
  const sides = (dx: number, dy: number) =>
    cover(x + dx + dy, y + dy + dx) + cover(x + dx - dy, y + dy - dx) + Math.SQRT2 * cover(x + dx, y + dy);
  const across = Math.abs(sides(1, 0) - sides(-1, 0));
  const down = Math.abs(sides(0, 1) - sides(0, -1));
  const length = Math.hypot(across, down);
  const covered = cover(x, y);
  if (length === 0) return 1 - covered;
  const [long, short] = [Math.max(across, down) / length, Math.min(across, down) / length];
  return Math.max(0, 0.5 + edgeDistance(covered, long, short));
}

/** How far a pixel's middle is outside of a straight edge that covers so much of it; the edge's direction by its normal. */
function edgeDistance(covered: number, long: number, short: number): number {
  const corner = short / long / 2;
  if (covered < corner) return (long + short) / 2 - Math.sqrt(2 * long * short * covered);
  if (covered > 1 - corner) return Math.sqrt(2 * long * short * (1 - covered)) - (long + short) / 2;
  return (0.5 - covered) * long;
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
