import { distance, type Point } from './point';

/** Pieces of a ring shorter than this are nothing, mm. */
const NOTHING_MM = 1e-9;
/** Two pieces that only touch, within this, do not cross, mm: a micrometre. */
const TOUCHING_MM = 1e-3;

type Piece = {
  readonly a: Point;
  readonly b: Point;
  readonly left: number;
  readonly right: number;
  readonly index: number;
};

/** True when a closed ring of straight pieces never crosses itself. Neighbours meet, and touching is not crossing. */
export function isSimpleRing(ring: readonly Point[]): boolean {
  const pieces = piecesOf(ring);
  const last = pieces.length - 1;
  // From left to right, so that each piece is held only against those that begin before it ends.
  const sorted = [...pieces].sort((one, other) => one.left - other.left);
  return sorted.every((one, at) => {
    for (let next = at + 1; next <= last; next += 1) {
      const other = sorted[next];
      if (!other || other.left > one.right) return true;
      const apart = Math.abs(one.index - other.index);
      if (apart > 1 && apart < last && crosses(one, other)) return false;
    }
    return true;
  });
}

function piecesOf(ring: readonly Point[]): Piece[] {
  const pieces: Piece[] = [];
  for (const [index, b] of ring.entries()) {
    const a = ring[index - 1];
    if (!a || distance(a, b) <= NOTHING_MM) continue;
    pieces.push({ a, b, left: Math.min(a.x, b.x), right: Math.max(a.x, b.x), index: pieces.length });
  }
  return pieces;
}

function crosses({ a, b }: Piece, { a: c, b: d }: Piece): boolean {
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
  return sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0;
}

/** On which side of the line through `from` and `to` a point lies; 0 where it is on it, within a touch. */
function sideOf(from: Point, to: Point, point: Point): number {
  const area = (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
  return Math.abs(area) < TOUCHING_MM * distance(from, to) ? 0 : Math.sign(area);
}
