import { cubicAt, curve, line, move, type Path } from '../geometry/path';
import { along, between, distance, type Point } from '../geometry/point';
import type { TeeCorners } from './tee-shape';

/** Distances of the two rows of stitching from the edge of hem and sleeve, mm: 3/4 in and 1/2 in (common practice, no source). */
export const STITCH_ROWS_MM = [19, 13] as const;

/** Distance between two ribs of the collar's knit as it is drawn, mm; for looks. */
const RIB_STEP_MM = 5;

/** The knit of the collar's right half: short lines across the band between its edge and its seam. */
export function ribKnit(ribEdge: Path, collarSeam: Path): Path {
  const [edge, seam] = [halfCurve(ribEdge), halfCurve(collarSeam)];
  const count = Math.round((distance(seam[0], seam[3]) * 1.2) / RIB_STEP_MM);
  return Array.from({ length: count }, (_, index) => (index + 0.5) / count).flatMap((t) => [
    move(cubicAt(...edge, t)),
    line(cubicAt(...seam, t)),
  ]);
}

/** Folds that the cloth of the right half falls into where sleeve and body meet; for looks. */
export function sleeveFolds({ shoulder, underarm, sleeveBottom, sleeveAngleRad }: TeeCorners): Path[] {
  const reach = distance(shoulder, underarm);
  const inSleeve = along(between(underarm, sleeveBottom, 0.2), sleeveAngleRad - Math.PI / 2, reach * 0.015);
  const sleeveEnd = along(inSleeve, sleeveAngleRad - 1.35, reach * 0.3);
  const inBody = { x: underarm.x - reach * 0.012, y: underarm.y + reach * 0.03 };
  const bodyEnd = { x: underarm.x - reach * 0.25, y: underarm.y + reach * 0.15 };
  return [
    [move(inSleeve), bent(inSleeve, sleeveEnd, -0.07)],
    [move(inBody), bent(inBody, bodyEnd, 0.09)],
  ];
}

/** A curve between two points that leaves the straight line by a share of its length, to the right where positive. */
function bent(from: Point, to: Point, share: number) {
  const aside = { x: -(to.y - from.y) * share, y: (to.x - from.x) * share };
  const at = (t: number) => {
    const on = between(from, to, t);
    return { x: on.x + aside.x, y: on.y + aside.y };
  };
  return curve(at(0.33), at(0.67), to);
}

function halfCurve(path: Path): [Point, Point, Point, Point] {
  const [start, step] = path;
  if (start?.step !== 'move' || step?.step !== 'curve')
    throw new Error(`halfCurve: begins with ${start?.step}, ${step?.step}`);
  return [start.to, step.c1, step.c2, step.to];
}
