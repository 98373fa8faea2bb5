import Flatbush from 'flatbush';
import type { Path } from '@/lib/domain/geometry/path';

type At = { readonly x: number; readonly y: number };

/** Both curves are looked at this closely, mm. */
export const SAMPLE_MM = 0.1;

/** Places on a drawn path, each no further than 0.1 mm from the next; curves by repeated halving (de Casteljau). */
export function sampledPath(path: Path): At[] {
  const places: At[] = [];
  let [from, start]: At[] = [];
  for (const step of path) {
    const to: At | undefined = step.step === 'close' ? start : step.to;
    if (step.step === 'move') start = step.to;
    else if (from && to)
      places.push(...(step.step === 'curve' ? halved(from, step.c1, step.c2, to) : straight(from, to)));
    from = to;
  }
  return places;
}

/** Places along a ring of straight pieces. */
export function sampledRing(ring: readonly At[]): At[] {
  return ring.flatMap((from, index) => straight(from, ring[(index + 1) % ring.length] ?? from));
}

/** The smallest distance between any place of one and any of the other, found by an index that knows nothing of lines. */
export function sampledDistance(one: readonly At[], other: readonly At[]): number {
  const index = new Flatbush(other.length);
  for (const { x, y } of other) index.add(x, y, x, y);
  index.finish();
  let nearest = Number.POSITIVE_INFINITY;
  for (const { x, y } of one) {
    const [found] = index.neighbors(x, y, 1, nearest);
    const at = found === undefined ? undefined : other[found];
    if (at) nearest = Math.min(nearest, Math.hypot(at.x - x, at.y - y));
  }
  return nearest;
}

function straight(from: At, to: At): At[] {
  const parts = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / SAMPLE_MM));
  return Array.from({ length: parts + 1 }, (_, part) => middle(from, to, part / parts));
}

function halved(a: At, b: At, c: At, d: At): At[] {
  const reach = Math.hypot(b.x - a.x, b.y - a.y) + Math.hypot(c.x - b.x, c.y - b.y) + Math.hypot(d.x - c.x, d.y - c.y);
  if (reach <= SAMPLE_MM) return [a, d];
  const [ab, bc, cd] = [middle(a, b), middle(b, c), middle(c, d)];
  const [abc, bcd] = [middle(ab, bc), middle(bc, cd)];
  const on = middle(abc, bcd);
  return [...halved(a, ab, abc, on), ...halved(on, bcd, cd, d)];
}

function middle(a: At, b: At, share = 1 / 2): At {
  return { x: a.x * (1 - share) + b.x * share, y: a.y * (1 - share) + b.y * share };
}
