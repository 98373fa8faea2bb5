import { line, move, type Path, reversedPath } from '../../geometry/path';
import { along, between, distance, type Point } from '../../geometry/point';
import type { Tape } from '../kind-design';
import { chained, straight, swept } from './curves';
import { closed, type Drawn, pairOf, partPair } from './drawn';
import { sleeveStitchRows } from './hem';
import { ribKnit } from './rib';

/** The rows of stitching of a turned-up sleeve end; `under` is the underarm seam, from the end up. */
export function hemmedEnd(tape: Tape, top: Point, bottom: Point, under: Path, fallRad: number): Drawn {
  const second = under[1];
  const next = second?.step === 'curve' ? second.to : bottom;
  const reach = distance(bottom, next);
  const rows = sleeveStitchRows(tape('sleeveLength')).map((fromEdge): Path => {
    const start = along(top, fallRad + Math.PI, fromEdge);
    const end = between(bottom, next, Math.min(0.8, fromEdge / Math.max(reach, 1)));
    return [move(start), line(end)];
  });
  return { parts: [], lines: rows.flatMap((row) => pairOf('sleeveStitch', row)) };
}

/** A knitted band at the end of a sleeve, as wide as the sleeve. */
export function ribbedEnd(tape: Tape, top: Point, bottom: Point, under: Path, fallRad: number): Drawn {
  const second = under[1];
  const next = second?.step === 'curve' ? second.to : bottom;
  const depth = tape('cuffRib');
  const seamTop = along(top, fallRad + Math.PI, depth);
  const seamBottom = between(bottom, next, Math.min(0.8, depth / Math.max(1, distance(bottom, next))));
  return cuffDrawn(straight(seamTop, seamBottom), straight(top, bottom));
}

/** A cuff between its seam and its free edge, on both sleeves. */
export function cuffDrawn(seam: Path, edge: Path): Drawn {
  return {
    parts: partPair('rib', closed(chained(seam, reversedPath(edge)))),
    lines: [...pairOf('ribKnit', ribKnit(seam, edge)), ...pairOf('cuffSeam', seam)],
  };
}

/** A knitted cuff at the end of a sleeve that spills over it. */
export function cuffCorners(tape: Tape, top: Point, bottom: Point, wristRad: number) {
  const [depth, spill] = [tape('cuffRib'), Math.min(7, tape('sleeveOpening') * 0.08)];
  const backRad = wristRad + Math.PI;
  const [seamTop, seamBottom] = [along(top, backRad, depth), along(bottom, backRad, depth)];
  const sleeveTop = along(along(seamTop, wristRad - Math.PI / 2, spill), backRad, spill);
  const sleeveBottom = along(along(seamBottom, wristRad + Math.PI / 2, spill), backRad, spill);
  const inwards = wristRad + Math.PI / 2;
  return {
    seam: straight(seamTop, seamBottom),
    sleeveTop,
    sleeveBottom,
    over: chained(swept(sleeveTop, wristRad, 0.5, seamTop, inwards, 0.3), straight(seamTop, top)),
    back: chained(straight(bottom, seamBottom), swept(seamBottom, inwards, 0.3, sleeveBottom, backRad, 0.5)),
  };
}
