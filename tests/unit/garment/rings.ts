import type { FrozenFlat } from '@/lib/domain/garment/flat';
import { flattened } from '@/lib/domain/geometry/path';
import { pathFromData } from '@/lib/domain/geometry/path-data';

type RingPoint = { x: number; y: number };

/** A chain of straight pieces. */
export type Chain = readonly RingPoint[];

// The same lines are asked about for every print on them and for every point of it.
const chainsByData = new Map<string, readonly Chain[]>();
const piecesByChain = new WeakMap<Chain, readonly Piece[]>();

/** Every run of drawn path data as straight pieces. */
export function chainsOf(d: string): readonly Chain[] {
  const chains = chainsByData.get(d) ?? flattened(pathFromData(d), 20);
  chainsByData.set(d, chains);
  return chains;
}

/** The outline as one ring of points. */
export function outlineRing(flat: Pick<FrozenFlat, 'outline'>): Chain {
  const [ring] = chainsOf(flat.outline);
  if (!ring) throw new Error('an outline has a run');
  return ring;
}

/** True when no two pieces of the closed ring cross, other than neighbours at their common point. */
export function isSimple(ring: Chain): boolean {
  const pieces = piecesOf(ring);
  return pieces.every((a, index) =>
    pieces.every((b, other) => other <= index + 1 || (index === 0 && other === pieces.length - 1) || !crosses(a, b)),
  );
}

/** True when two chains cross anywhere. */
export function chainsCross(one: Chain, other: Chain): boolean {
  const others = piecesOf(other);
  return piecesOf(one).some((a) => others.some((b) => crosses(a, b)));
}

/** True when the point lies inside the ring (winding by crossing a ray). */
export function isWithin({ x, y }: RingPoint, ring: Chain): boolean {
  return (
    piecesOf(ring).filter(([a, b]) => a.y > y !== b.y > y && x < a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y)).length %
      2 ===
    1
  );
}

type Piece = readonly [RingPoint, RingPoint];

function piecesOf(chain: Chain): readonly Piece[] {
  const pieces = piecesByChain.get(chain) ?? cutToPieces(chain);
  piecesByChain.set(chain, pieces);
  return pieces;
}

function cutToPieces(chain: Chain): Piece[] {
  return chain.slice(1).flatMap((to, index) => {
    const from = chain[index];
    return from && Math.hypot(to.x - from.x, to.y - from.y) > 1e-9 ? [[from, to] as const] : [];
  });
}

/** Proper crossing by orientation; a micrometre of touching does not count. */
function crosses([a, b]: Piece, [c, d]: Piece): boolean {
  if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) return false;
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
  const side = (p: RingPoint, q: RingPoint, r: RingPoint) => {
    const area = (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
    return Math.abs(area) < 1e-3 * Math.hypot(q.x - p.x, q.y - p.y) ? 0 : Math.sign(area);
  };
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
