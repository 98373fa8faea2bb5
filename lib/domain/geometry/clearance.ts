import { type Box, bottomRight } from './box';
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
  for (const one of piecesOf(a)) {
    for (const other of piecesOf(b)) {
      if (nearest && boxGap(one.box, other.box) >= nearest.distance) continue;
      const found = pieceClearance(one, other);
      if (!nearest || found.distance < nearest.distance) nearest = found;
      if (nearest.distance === 0) return nearest;
    }
  }
  if (!nearest) throw new Error(`clearanceBetween: chains of ${a.length} and ${b.length} points`);
  return nearest;
}

/** True when two chains cross or touch anywhere. */
export function chainsMeet(a: Polyline, b: Polyline): boolean {
  return piecesOf(a).some((one) =>
    piecesOf(b).some((other) => boxGap(one.box, other.box) === 0 && crossing(one, other) !== null),
  );
}

/** True when the point lies inside the closed chain (even-odd rule). */
export function isInside(point: Point, ring: Polyline): boolean {
  let inside = false;
  for (const { from, to } of piecesOf(ring)) {
    const straddles = from.y > point.y !== to.y > point.y;
    if (straddles && point.x < from.x + ((point.y - from.y) / (to.y - from.y)) * (to.x - from.x)) inside = !inside;
  }
  return inside;
}

/** A distance two things cannot be nearer than: that of the upright boxes around them. */
export function boxGap(a: Box, b: Box): number {
  const [endA, endB] = [bottomRight(a), bottomRight(b)];
  return Math.hypot(Math.max(0, b.x - endA.x, a.x - endB.x), Math.max(0, b.y - endA.y, a.y - endB.y));
}

/** One straight piece of a chain, with the box around it. */
type Piece = { readonly from: Point; readonly to: Point; readonly box: Box };

const piecesByChain = new WeakMap<Polyline, readonly Piece[]>();

/** Chains do not change: each is taken apart once. */
function piecesOf(chain: Polyline): readonly Piece[] {
  const known = piecesByChain.get(chain);
  if (known) return known;
  const pieces = chain.slice(1).map((to, index): Piece => {
    const from = chain[index] ?? to;
    const [x, y] = [Math.min(from.x, to.x), Math.min(from.y, to.y)];
    return { from, to, box: { x, y, width: Math.abs(to.x - from.x), height: Math.abs(to.y - from.y) } };
  });
  piecesByChain.set(chain, pieces);
  return pieces;
}

function pieceClearance(one: Piece, other: Piece): Clearance {
  const meeting = crossing(one, other);
  if (meeting) return { distance: 0, from: meeting, to: meeting };
  const ends: Clearance[] = [
    pointClearance(one.from, other),
    pointClearance(one.to, other),
    turned(pointClearance(other.from, one)),
    turned(pointClearance(other.to, one)),
  ];
  return ends.reduce((nearest, each) => (each.distance < nearest.distance ? each : nearest));
}

function pointClearance(point: Point, { from, to }: Piece): Clearance {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const lengthSquared = dx * dx + dy * dy;
  const along = (point.x - from.x) * dx + (point.y - from.y) * dy;
  const share = lengthSquared === 0 ? 0 : Math.min(1, Math.max(0, along / lengthSquared));
  const foot = { x: from.x + share * dx, y: from.y + share * dy };
  return { distance: Math.hypot(point.x - foot.x, point.y - foot.y), from: point, to: foot };
}

function turned({ distance, from, to }: Clearance): Clearance {
  return { distance, from: to, to: from };
}

/** Where two pieces cross or touch, or null. Pieces that run along each other are left to their ends' distances. */
function crossing({ from: a, to: a1 }: Piece, { from: b, to: b1 }: Piece): Point | null {
  const [rx, ry, sx, sy] = [a1.x - a.x, a1.y - a.y, b1.x - b.x, b1.y - b.y];
  const across = rx * sy - ry * sx;
  if (across === 0) return null;
  const t = ((b.x - a.x) * sy - (b.y - a.y) * sx) / across;
  const u = ((b.x - a.x) * ry - (b.y - a.y) * rx) / across;
  if (t < 0 || t > 1 || u < 0 || u > 1) return null;
  return { x: a.x + t * rx, y: a.y + t * ry };
}
