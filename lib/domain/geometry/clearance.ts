import type { Point } from './point';

/** A chain of straight pieces; closed when its last point repeats the first. */
export type Polyline = readonly Point[];

/** The nearest two places of two chains: how far apart they are, and where. Zero where they cross or touch. */
export type Clearance = { readonly distance: number; readonly from: Point; readonly to: Point };

/**
 * The smallest distance between two chains of straight pieces, in their own unit, with the places it lies between.
 * Exact for the pieces given; throws when either chain has fewer than two points.
 */
export function clearanceBetween(a: Polyline, b: Polyline): Clearance {
  let nearest: Clearance | null = null;
  for (const [a0, a1] of pieces(a)) {
    for (const [b0, b1] of pieces(b)) {
      if (nearest && boxGap(a0, a1, b0, b1) >= nearest.distance) continue;
      const found = pieceClearance(a0, a1, b0, b1);
      if (!nearest || found.distance < nearest.distance) nearest = found;
      if (nearest.distance === 0) return nearest;
    }
  }
  if (!nearest) throw new Error(`clearanceBetween: chains of ${a.length} and ${b.length} points`);
  return nearest;
}

/** True when two chains cross or touch anywhere. */
export function chainsMeet(a: Polyline, b: Polyline): boolean {
  return pieces(a).some(([a0, a1]) =>
    pieces(b).some(([b0, b1]) => boxGap(a0, a1, b0, b1) === 0 && crossing(a0, a1, b0, b1) !== null),
  );
}

/** True when the point lies inside the closed chain (even-odd rule). */
export function isInside(point: Point, ring: Polyline): boolean {
  let inside = false;
  for (const [a, b] of pieces(ring)) {
    const straddles = a.y > point.y !== b.y > point.y;
    if (straddles && point.x < a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}

function pieces(chain: Polyline): [Point, Point][] {
  return chain.slice(1).map((end, index) => [chain[index] ?? end, end]);
}

function pieceClearance(a0: Point, a1: Point, b0: Point, b1: Point): Clearance {
  const meeting = crossing(a0, a1, b0, b1);
  if (meeting) return { distance: 0, from: meeting, to: meeting };
  const ends: Clearance[] = [
    pointClearance(a0, b0, b1),
    pointClearance(a1, b0, b1),
    turned(pointClearance(b0, a0, a1)),
    turned(pointClearance(b1, a0, a1)),
  ];
  return ends.reduce((nearest, each) => (each.distance < nearest.distance ? each : nearest));
}

function pointClearance(point: Point, a: Point, b: Point): Clearance {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const lengthSquared = dx * dx + dy * dy;
  const share =
    lengthSquared === 0 ? 0 : Math.min(1, Math.max(0, ((point.x - a.x) * dx + (point.y - a.y) * dy) / lengthSquared));
  const foot = { x: a.x + share * dx, y: a.y + share * dy };
  return { distance: Math.hypot(point.x - foot.x, point.y - foot.y), from: point, to: foot };
}

function turned({ distance, from, to }: Clearance): Clearance {
  return { distance, from: to, to: from };
}

/** Where two pieces cross or touch, or null. Pieces that run along each other are left to their ends' distances. */
function crossing(a0: Point, a1: Point, b0: Point, b1: Point): Point | null {
  const [rx, ry, sx, sy] = [a1.x - a0.x, a1.y - a0.y, b1.x - b0.x, b1.y - b0.y];
  const across = rx * sy - ry * sx;
  if (across === 0) return null;
  const t = ((b0.x - a0.x) * sy - (b0.y - a0.y) * sx) / across;
  const u = ((b0.x - a0.x) * ry - (b0.y - a0.y) * rx) / across;
  if (t < 0 || t > 1 || u < 0 || u > 1) return null;
  return { x: a0.x + t * rx, y: a0.y + t * ry };
}

/** A distance two pieces cannot be nearer than: that of their upright boxes. */
function boxGap(a0: Point, a1: Point, b0: Point, b1: Point): number {
  const gapX = Math.max(0, Math.min(b0.x, b1.x) - Math.max(a0.x, a1.x), Math.min(a0.x, a1.x) - Math.max(b0.x, b1.x));
  const gapY = Math.max(0, Math.min(b0.y, b1.y) - Math.max(a0.y, a1.y), Math.min(a0.y, a1.y) - Math.max(b0.y, b1.y));
  return Math.hypot(gapX, gapY);
}
