import { distance, type Point } from './point';

/** Pieces of a ring shorter than this are nothing, mm. */
const NOTHING_MM = 1e-9;
/** Two pieces that only touch, within this, do not cross, mm: a micrometre. */
const TOUCHING_MM = 1e-3;

type Piece = readonly [Point, Point];

/** True when a closed ring of straight pieces never crosses itself. Neighbours meet, and touching is not crossing. */
export function isSimpleRing(ring: readonly Point[]): boolean {
  const pieces = ring.slice(1).flatMap((to, index): Piece[] => {
    const from = ring[index];
    return from && distance(from, to) > NOTHING_MM ? [[from, to]] : [];
  });
  const last = pieces.length - 1;
  return pieces.every((one, index) => {
    for (let other = index + 2; other <= last; other += 1) {
      const piece = pieces[other];
      if (piece && !(index === 0 && other === last) && crosses(one, piece)) return false;
    }
    return true;
  });
}

function crosses([a, b]: Piece, [c, d]: Piece): boolean {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return false;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
  return sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0;
}

/** On which side of the line through `from` and `to` a point lies; 0 where it is on it, within a touch. */
function sideOf(from: Point, to: Point, point: Point): number {
  const area = (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
  return Math.abs(area) < TOUCHING_MM * distance(from, to) ? 0 : Math.sign(area);
}
