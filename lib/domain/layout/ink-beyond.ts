import type { Side } from '../garment/flat';
import { chainsMeet, clearanceBetween, isInside, type Polyline } from '../geometry/clearance';
import { between, distance, type Point } from '../geometry/point';
import { type Micrometres, umFromMm } from '../measure/length';
import type { LineChain } from './flat-chains';

/** The place of the ink that reaches furthest beyond something, and how far. */
export type Beyond = { readonly um: Micrometres; readonly at: Point };

/** Ink that is known to reach beyond is looked at this closely, to say where most and how far; mm. */
const LOOKED_AT_EVERY_MM = 2;

/** Where ink reaches furthest off a garment's edge; null where all of it is on the cloth. */
export function outsideOf(ring: Polyline, outline: Polyline): Beyond | null {
  const isOut = (point: Point) => !isInside(point, outline);
  if (!ring.some(isOut) && !chainsMeet(ring, outline)) return null;
  return farthest(
    finely(ring)
      .filter(isOut)
      .map((at) => ({ at, mm: clearanceBetween([at, at], outline).distance })),
  );
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
  return farthest(
    finely(ring).flatMap((at) => {
      const edge = armholeAt(armholes, at);
      return edge === null ? [] : [{ at, mm: Math.abs(at.x) - edge }];
    }),
  );
}

/** How far from the centre line the armhole on the point's own side is, level with it; null above and below the armhole. */
function armholeAt(armholes: readonly LineChain[], { x, y }: Point): number | null {
  const edges = armholes.flatMap(({ chain }) =>
    chain.slice(1).flatMap((to, index) => {
      const from = chain[index] ?? to;
      const isLevel = from.y <= y !== to.y <= y;
      if (!isLevel) return [];
      const edge = between(from, to, (y - from.y) / (to.y - from.y)).x;
      return edge > 0 === x > 0 ? [Math.abs(edge)] : [];
    }),
  );
  return edges.length > 0 ? Math.min(...edges) : null;
}

function finely(ring: Polyline): Point[] {
  return ring.slice(1).flatMap((to, index) => {
    const from = ring[index] ?? to;
    const steps = Math.max(1, Math.ceil(distance(from, to) / LOOKED_AT_EVERY_MM));
    return Array.from({ length: steps }, (_, step) => between(from, to, step / steps));
  });
}

function farthest(reaches: readonly { readonly at: Point; readonly mm: number }[]): Beyond | null {
  const [first, ...rest] = reaches;
  if (!first) return null;
  const { at, mm } = rest.reduce((far, each) => (each.mm > far.mm ? each : far), first);
  return { at, um: umFromMm(mm) };
}
