import { type Box, boxAround } from './box';
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
  if (a.length < 2 || b.length < 2) throw new Error(`clearanceBetween: chains of ${a.length} and ${b.length} points`);
  const [one, other] = [takenApart(a), takenApart(b)];
  // The likeliest run first: most others then lie further off than what is known, by their boxes alone.
  const runs = other.runs.map((run) => ({ run, gap: boxGap(one.box, run.box) })).sort((p, q) => p.gap - q.gap);
  let nearest = FAR;
  for (const { run, gap } of runs) {
    if (gap >= nearest.distance) break;
    for (const piece of run.pieces) {
      if (boxGap(one.box, piece.box) < nearest.distance) nearest = nearestOf(one, piece, nearest);
    }
  }
  return nearest;
}

const FAR: Clearance = { distance: Number.POSITIVE_INFINITY, from: { x: 0, y: 0 }, to: { x: 0, y: 0 } };

/** The place of a chain nearest to one piece, where that is nearer than what is known. */
function nearestOf({ runs }: Apart, other: Piece, known: Clearance): Clearance {
  let nearest = known;
  for (const run of runs) {
    if (boxGap(run.box, other.box) >= nearest.distance) continue;
    for (const one of run.pieces) {
      if (boxGap(one.box, other.box) >= nearest.distance) continue;
      const found = pieceClearance(one, other);
      if (found.distance < nearest.distance) nearest = found;
    }
  }
  return nearest;
}

/** Boxes that touch may be rounded this far apart. */
const ROUNDING = 1e-9;

/** True when two chains cross or touch anywhere. */
export function chainsMeet(a: Polyline, b: Polyline): boolean {
  const [one, other] = [takenApart(a), takenApart(b)];
  return close(other.runs, one.box).some((run) =>
    close(run.pieces, one.box).some((piece) =>
      close(one.runs, piece.box).some((each) =>
        close(each.pieces, piece.box).some((mine) => crossing(mine, piece) !== null),
      ),
    ),
  );
}

/** Those whose boxes touch this one. */
function close<Boxed extends { readonly box: Box }>(all: readonly Boxed[], to: Box): Boxed[] {
  return all.filter(({ box }) => boxGap(box, to) < ROUNDING);
}

/** True when the point lies inside the closed chain (even-odd rule). */
export function isInside(point: Point, ring: Polyline): boolean {
  let inside = false;
  for (const { box, pieces } of takenApart(ring).runs) {
    if (point.y < box.y - ROUNDING || point.y > box.y + box.height + ROUNDING) continue;
    for (const { from, to } of pieces) {
      const straddles = from.y > point.y !== to.y > point.y;
      if (straddles && point.x < from.x + ((point.y - from.y) / (to.y - from.y)) * (to.x - from.x)) inside = !inside;
    }
  }
  return inside;
}

/** The one of these points that lies furthest from a chain, and how far; null of no points. */
export function farthestFrom(points: readonly Point[], chain: Polyline): { at: Point; distance: number } | null {
  let farthest: { at: Point; distance: number } | null = null;
  for (const at of points) {
    const { distance } = clearanceBetween([at, at], chain);
    if (distance > (farthest?.distance ?? -1)) farthest = { at, distance };
  }
  return farthest;
}

/** A distance two things cannot be nearer than: that of the upright boxes around them. */
export function boxGap(a: Box, b: Box): number {
  const across = Math.max(0, b.x - a.x - a.width, a.x - b.x - b.width);
  const down = Math.max(0, b.y - a.y - a.height, a.y - b.y - b.height);
  return across === 0 ? down : down === 0 ? across : Math.hypot(across, down);
}

/** One straight piece of a chain, with the box around it. */
type Piece = { readonly from: Point; readonly to: Point; readonly box: Box };

/** Pieces that follow each other, with the box around them. */
type Run = { readonly pieces: readonly Piece[]; readonly box: Box };

/** A chain as runs of its pieces, with the box around all of them. */
type Apart = { readonly runs: readonly Run[]; readonly box: Box };

/** Pieces in a run: enough that most of a chain is passed over by the boxes of few runs. */
const RUN_LENGTH = 16;

const apartByChain = new WeakMap<Polyline, Apart>();

/** Chains do not change: each is taken apart once. */
function takenApart(chain: Polyline): Apart {
  const known = apartByChain.get(chain);
  if (known) return known;
  const runs: Run[] = [];
  for (let start = 0; start + 1 < chain.length; start += RUN_LENGTH) {
    const points = chain.slice(start, start + RUN_LENGTH + 1);
    const pieces = points.slice(1).map((to, index) => pieceFrom(points[index] ?? to, to));
    runs.push({ pieces, box: boxAround(points) });
  }
  const apart = { runs, box: boxAround(chain) };
  apartByChain.set(chain, apart);
  return apart;
}

function pieceFrom(from: Point, to: Point): Piece {
  const [x, y] = [Math.min(from.x, to.x), Math.min(from.y, to.y)];
  return { from, to, box: { x, y, width: Math.abs(to.x - from.x), height: Math.abs(to.y - from.y) } };
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
