import { line, move, type Path } from '../../geometry/path';
import { pointsAlong } from './curves';

/** Distance between two ribs of a knit as it is drawn, mm; for looks. */
const RIB_STEP_MM = 6.5;

/** The knit of a rib: short lines across the band between two runs that go the same way, none at the ends. */
export function ribKnit(edge: Path, seam: Path, stepMm = RIB_STEP_MM): Path {
  const count = Math.max(2, Math.round(lengthOf(seam) / stepMm));
  const [from, to] = [middles(edge, count), middles(seam, count)];
  return from.flatMap((point, index) => [move(point), line(to[index] ?? point)]);
}

/** The points half-way along each of `count` equal pieces. */
function middles(path: Path, count: number) {
  return pointsAlong(path, 2 * count + 1).filter((_, index) => index % 2 === 1);
}

function lengthOf(path: Path): number {
  return pointsAlong(path, 65).reduce((sum, point, index, points) => {
    const before = points[index - 1] ?? point;
    return sum + Math.hypot(point.x - before.x, point.y - before.y);
  }, 0);
}
