import type { FlatLineName, FrozenFlat } from '@/lib/domain/garment/flat';
import { boxGap, clearanceBetween } from '@/lib/domain/geometry/clearance';
import type { Point } from '@/lib/domain/geometry/point';
import { chainsOf } from '@/lib/domain/layout/flat-chains';
import type { PlacedPrint } from '@/lib/domain/layout/placement';
import { type Micrometres, umFromMm } from '@/lib/domain/measure/length';

/** The line of a flat that lies nearest to a print, how far, and where: `from` on the ink, `to` on the line, mm. */
export type NearestSeam = {
  readonly line: FlatLineName;
  readonly um: Micrometres;
  readonly from: Point;
  readonly to: Point;
};

/** The nearest line that a press cannot lie flat across; null on a flat without one. 0 µm where the ink crosses it. */
export function nearestSeam(
  { inkOutline, inkBox }: Pick<PlacedPrint, 'inkOutline' | 'inkBox'>,
  flat: FrozenFlat,
): NearestSeam | null {
  const [first] = inkOutline;
  if (!first) return null;
  const ring = [...inkOutline, first];
  // Likely ones first: most others then lie further off by the boxes around them alone.
  const lines = chainsOf(flat)
    .lines.map((each) => ({ ...each, gap: boxGap(inkBox, each.box) }))
    .sort((a, b) => a.gap - b.gap);
  let nearest: { line: FlatLineName; distance: number; from: Point; to: Point } | null = null;
  for (const { line, chain, gap } of lines) {
    if (nearest && gap >= nearest.distance) break;
    const clearance = clearanceBetween(ring, chain);
    if (!nearest || clearance.distance < nearest.distance) nearest = { line, ...clearance };
  }
  return nearest && { line: nearest.line, um: umFromMm(nearest.distance), from: nearest.from, to: nearest.to };
}
