import { type ArtFacts, MOST_SPOTS, type Spot } from '../art-facts';
import type { JoinedArea } from './joined-runs';
import { classOf, FAINT, type PixelWords } from './pixel-classes';
import type { AreaScan } from './scan-area';

/** Stray pixels are this small whatever the picture's size; in a large one, a part of its long side. */
const SMALLEST_SPECK_PX = 3;
const SPECK_PART = 500;
/** A dot that belongs to a letter lies within so many of its own widths of it. */
const ROOM_ROUND = 3;
/** Least clear room round a speck: what lies nearer is a crumb of an edge. */
const LEAST_ROOM_PX = 4;
/** A JPEG's crumbs lie in the blocks of 16 pixels that an edge runs through (ITU-T T.81, A.2: with halved colour; from memory). */
const LEAST_ROOM_ON_BACKING_PX = 18;
/** What is looked at of a picture full of dust. */
const MOST_LOOKED_AT = 3_000;

/** How wide and tall stray pixels are at most, in a picture with this long side. */
export function speckPx(longPx: number): number {
  return Math.max(SMALLEST_SPECK_PX, Math.round(longPx / SPECK_PART));
}

/** Stray pixels: tiny areas with nothing of the drawing round them, which are not the dots of a pattern. */
export function specksOf(pixels: PixelWords, scan: AreaScan, small: readonly JoinedArea[]): ArtFacts['specks'] {
  const every = Math.max(1, Math.ceil(small.length / MOST_LOOKED_AT));
  const lookedAt = small.filter((_, index) => index % every === 0);
  const alone = lookedAt.filter((one) => isAlone(pixels, scan, one));
  if (isPattern(alone)) return { count: 0, spots: [] };
  alone.sort((a, b) => b.areaPx - a.areaPx);
  const spots = alone.slice(0, MOST_SPOTS).map(({ x, y, width, height }): Spot => ({ x, y, width, height }));
  return { count: alone.length * every, spots };
}

/** Whether nothing larger than a few specks lies near. */
function isAlone({ words, widthPx }: PixelWords, { area, backing }: AreaScan, small: JoinedArea): boolean {
  const room = Math.max(
    backing ? LEAST_ROOM_ON_BACKING_PX : LEAST_ROOM_PX,
    ROOM_ROUND * Math.max(small.width, small.height),
  );
  const fromX = Math.max(area.x, small.x - room);
  const toX = Math.min(area.x + area.width, small.x + small.width + room);
  const fromY = Math.max(area.y, small.y - room);
  const toY = Math.min(area.y + area.height, small.y + small.height + room);
  const enough = small.areaPx * 3;
  let others = 0;
  for (let y = fromY; y < toY; y += 1) {
    for (let x = fromX; x < toX; x += 1) {
      if (classOf(words[y * widthPx + x] ?? 0, backing) < FAINT) continue;
      others += 1;
      if (others > enough) return false;
    }
  }
  return true;
}

/** Distances to the nearest other vary by less than this part of their mean in a screen of dots; at random by a half. */
const EVEN = 0.25;
const LEAST_DOTS = 30;

function isPattern(dots: readonly JoinedArea[]): boolean {
  if (dots.length < LEAST_DOTS) return false;
  const some = dots.slice(0, 400);
  const nearest = some.map((dot) => {
    let least = Number.POSITIVE_INFINITY;
    for (const other of dots) {
      if (other !== dot) least = Math.min(least, Math.hypot(other.x - dot.x, other.y - dot.y));
    }
    return least;
  });
  const mean = nearest.reduce((sum, distance) => sum + distance, 0) / nearest.length;
  const variance = nearest.reduce((sum, distance) => sum + (distance - mean) ** 2, 0) / nearest.length;
  return Math.sqrt(variance) < EVEN * mean;
}
