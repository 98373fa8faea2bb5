import type { Side } from '../garment/flat';
import { chainsMeet, farthestFrom, isInside, type Polyline } from '../geometry/clearance';
import { between, distance, type Point } from '../geometry/point';
import { type Micrometres, umFromMm } from '../measure/length';
import type { LineChain } from './flat-chains';

/** The place of the ink that reaches furthest beyond something, and how far. */
export type Beyond = { readonly um: Micrometres; readonly at: Point };

/** Ink that is known to reach beyond is looked at in so many places around it, and at its corners, to say where most. */
const PLACES_AROUND = 64;

/** Whether all of the ink is on the cloth: no corner beyond the edge, and no side across it. */
export function isOn(ring: Polyline, outline: Polyline): boolean {
  const [first] = ring;
  // Ink that crosses the edge nowhere lies on one side of it.
  return first !== undefined && isInside(first, outline) && !chainsMeet(ring, outline);
}

/** Where ink reaches furthest off a garment's edge; null where all of it is on the cloth. */
export function outsideOf(ring: Polyline, outline: Polyline): Beyond | null {
  if (isOn(ring, outline)) return null;
  const isOut = (point: Point) => !isInside(point, outline);
  const farthestOut = farthestFrom(finely(ring).filter(isOut), outline);
  return farthestOut && { at: farthestOut.at, um: umFromMm(farthestOut.distance) };
}

/**
 * How far ink that runs across the armholes on both sides reaches past them, level along; null where it does not, and on
 * sleeves, which lie between no armholes.
 */
export function beyondArmholes(ring: Polyline, crossed: readonly LineChain[], side: Side): Beyond | null {
  if (side !== 'front' && side !== 'back') return null;
  const armholes = crossed.filter(({ line }) => line === 'armhole');
  const right = armholes.filter(({ box }) => box.x + box.width / 2 > 0);
  if (right.length === 0 || right.length === armholes.length) return null;
  const edges = armholes.flatMap(({ chain }) => sidesOf(chain));
  let farthest: { at: Point; mm: number } | null = null;
  for (const at of finely(ring)) {
    const mm = Math.abs(at.x) - armholeAt(edges, at);
    if (mm > (farthest?.mm ?? Number.NEGATIVE_INFINITY)) farthest = { at, mm };
  }
  return farthest && { at: farthest.at, um: umFromMm(farthest.mm) };
}

/** How far from the centre line the armhole on the point's own side is, level with it; infinitely above and below the armhole. */
function armholeAt(edges: readonly Straight[], { x, y }: Point): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const { from, to } of edges) {
    if (from.y <= y === to.y <= y) continue;
    const edge = between(from, to, (y - from.y) / (to.y - from.y)).x;
    if (edge > 0 === x > 0) nearest = Math.min(nearest, Math.abs(edge));
  }
  return nearest;
}

type Straight = { readonly from: Point; readonly to: Point };

function sidesOf(chain: Polyline): Straight[] {
  return chain.slice(1).map((to, index) => ({ from: chain[index] ?? to, to }));
}

function finely(ring: Polyline): Point[] {
  const sides = sidesOf(ring);
  const aroundMm = sides.reduce((sum, { from, to }) => sum + distance(from, to), 0);
  return sides.flatMap(({ from, to }) => {
    const steps = Math.max(1, Math.round((distance(from, to) / aroundMm) * PLACES_AROUND));
    return Array.from({ length: steps }, (_, step) => between(from, to, step / steps));
  });
}
