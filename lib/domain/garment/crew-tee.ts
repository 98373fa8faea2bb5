import { boxAroundBoxes } from '../geometry/box';
import {
  close,
  curve,
  flattened,
  joined,
  line,
  mirroredPath,
  move,
  type Path,
  pathBox,
  reversedPath,
} from '../geometry/path';
import { along, between, type Point } from '../geometry/point';
import { mmFromUm } from '../measure/length';
import type { ClothPart, Flat, FlatLineName } from './flat';
import type { Measures } from './measures';
import { ribKnit, STITCH_ROWS_MM, sleeveFolds } from './tee-details';
import { type TeeCorners, teeCorners } from './tee-shape';

/** The flat of a crew tee, front or back, drawn from its measures; every measure can be taken again on it. */
export function crewTeeFlat({ um }: Measures, side: 'front' | 'back'): Flat {
  const corners = teeCorners(um);
  const backDropMm = mmFromUm(um.backNeckDrop);
  const ribMm = mmFromUm(um.collarRib);
  const dropMm = side === 'front' ? mmFromUm(um.frontNeckDrop) : backDropMm;

  const collarSeam = neckCurve(corners.neck, dropMm);
  const ribEdge = neckCurve(corners.ribTop, dropMm - ribMm);
  const backEdge = neckCurve(corners.ribTop, backDropMm - ribMm);
  const backSeam = neckCurve(corners.neck, backDropMm);
  const shoulder: Path = [move(corners.neck), line(corners.shoulder)];
  const armhole = armholeCurve(corners);
  const sideSeam: Path = [move(corners.underarm), line(corners.chest), sideCurve(corners)];
  const hemLine = hemCurve(corners, mmFromUm(um.bodyLength));
  const sleeve = sleeveOutline(corners);

  const halfBody = [shoulder, armhole, sideSeam, hemLine].reduce(joined);
  const parts: { part: ClothPart; path: Path }[] = [
    ...(side === 'front' ? [{ part: 'insideBack' as const, path: band(backEdge, ribEdge) }] : []),
    ...bothSides(closed(joined(sleeve, reversedPath(armhole)))).map((path) => ({ part: 'sleeve' as const, path })),
    { part: 'body', path: mirroredWhole(joined(reversedPath(collarSeam), halfBody)) },
    { part: 'rib', path: band(ribEdge, collarSeam) },
  ];
  const lines: { line: FlatLineName; path: Path }[] = [
    ...(side === 'front' ? [{ line: 'innerCollar' as const, path: whole(reversedPath(backSeam)) }] : []),
    ...paired('ribKnit', ribKnit(ribEdge, collarSeam)),
    ...sleeveFolds(corners).flatMap((fold) => paired('fold', fold)),
    { line: 'collarSeam', path: whole(reversedPath(collarSeam)) },
    ...paired('shoulderSeam', [move(corners.ribTop), line(corners.shoulder)]),
    ...paired('armhole', armhole),
    ...paired('sideSeam', sideSeam),
    { line: 'hem', path: whole(hemLine) },
    ...paired('sleeveHem', [move(corners.sleeveTop), line(corners.sleeveBottom)]),
    ...STITCH_ROWS_MM.flatMap((fromEdge) => [
      { line: 'hemStitch' as const, path: whole(shifted(hemLine, -fromEdge, corners)) },
      ...paired('sleeveStitch', sleeveStitch(corners, fromEdge)),
    ]),
  ];
  const halfOutline = [[move(corners.ribTop), line(corners.neck)] as Path, shoulder, sleeve, sideSeam, hemLine].reduce(
    joined,
  );
  const topEdge = side === 'front' ? backEdge : ribEdge;
  const outline = mirroredWhole(joined(reversedPath(topEdge), halfOutline));

  return {
    side,
    parts,
    lines,
    outline,
    points: {
      collarSeamCentre: { x: 0, y: dropMm },
      highPointShoulder: corners.neck,
      shoulderPoint: corners.shoulder,
      underarm: corners.underarm,
      hemCentre: { x: 0, y: lowestPoint(hemLine) },
    },
    box: boxAroundBoxes([pathBox(outline)]),
  };
}

/** Right half of a neckline: from `from` round to the centre line at depth `dropMm`, meeting it square. */
function neckCurve(from: Point, dropMm: number): Path {
  const fall = dropMm - from.y;
  return [
    move(from),
    curve({ x: from.x * 0.97, y: from.y + fall * 0.58 }, { x: from.x * 0.56, y: dropMm }, { x: 0, y: dropMm }),
  ];
}

/** Shoulder point to underarm: close to upright at the shoulder, sweeping out underneath. */
function armholeCurve({ shoulder, underarm }: TeeCorners): Path {
  const height = underarm.y - shoulder.y;
  const inset = height * 0.075;
  return [
    move(shoulder),
    curve(
      { x: shoulder.x - inset, y: shoulder.y + height * 0.36 },
      { x: shoulder.x - inset * 0.4, y: underarm.y - height * 0.16 },
      underarm,
    ),
  ];
}

function sideCurve({ chest, hem }: TeeCorners) {
  const third = between(chest, hem, 1 / 3);
  const twoThirds = between(chest, hem, 2 / 3);
  const waist = (chest.x + hem.x) / 2 > 0 ? Math.min(3, chest.x * 0.012) : 0;
  return curve({ x: third.x - waist, y: third.y }, { x: twoThirds.x - waist, y: twoThirds.y }, hem);
}

/**
 * Right half of the hem. The whole hem is one symmetrical curve whose height at the neck point is exactly the body
 * length: y(t) = y0 + 3t(1 - t)q with x linear in t, so q follows from the t of the neck point.
 */
function hemCurve({ hem, neck, hemRiseMm }: TeeCorners, bodyLengthMm: number): Path {
  const neckShare = (1 - neck.x / hem.x) / 2;
  const q = hemRiseMm / (3 * neckShare * (1 - neckShare));
  const y0 = bodyLengthMm - hemRiseMm;
  const middle = y0 + 0.75 * q;
  return [move(hem), curve({ x: (hem.x * 2) / 3, y: y0 + q / 2 }, { x: hem.x / 3, y: middle }, { x: 0, y: middle })];
}

function sleeveOutline({ shoulder, sleeveTop, sleeveBottom, underarm, sleeveAngleRad }: TeeCorners): Path {
  const rise = along(
    shoulder,
    sleeveAngleRad - 0.14,
    Math.hypot(sleeveTop.x - shoulder.x, sleeveTop.y - shoulder.y) * 0.3,
  );
  const fall = along(
    sleeveTop,
    sleeveAngleRad + Math.PI,
    Math.hypot(sleeveTop.x - shoulder.x, sleeveTop.y - shoulder.y) * 0.4,
  );
  const tuck = between(sleeveBottom, underarm, 0.55);
  return [
    move(shoulder),
    curve(rise, fall, sleeveTop),
    line(sleeveBottom),
    curve(tuck, { x: underarm.x + 3, y: underarm.y + 3 }, underarm),
  ];
}

function sleeveStitch({ sleeveTop, sleeveBottom, sleeveAngleRad, underarm }: TeeCorners, fromEdgeMm: number): Path {
  const back = sleeveAngleRad + Math.PI;
  const top = along(sleeveTop, back, fromEdgeMm);
  const reach = Math.hypot(underarm.x - sleeveBottom.x, underarm.y - sleeveBottom.y);
  const bottom = between(sleeveBottom, underarm, Math.min(0.8, fromEdgeMm / Math.max(reach, 1)));
  return [move(top), line(bottom)];
}

/** The curve moved up the body, its ends kept on the side seam. */
function shifted(hemLine: Path, byMm: number, { chest, hem }: TeeCorners): Path {
  const inset = (hem.x - chest.x) * (byMm / (hem.y - chest.y));
  return hemLine.map((step) => {
    const moved = (point: Point): Point => ({
      x: point.x === 0 ? 0 : point.x + inset * (point.x / hem.x),
      y: point.y + byMm,
    });
    if (step.step === 'close') return step;
    if (step.step === 'curve') return curve(moved(step.c1), moved(step.c2), moved(step.to));
    return { ...step, to: moved(step.to) };
  });
}

/** A closed band across the centre line between two right-half curves that run from the shoulder to the centre. */
function band(upper: Path, lower: Path): Path {
  const right = joined(reversedPath(upper), lower);
  const left = joined(reversedPath(mirroredPath(lower)), mirroredPath(upper));
  return closed(joined(right, left));
}

/** The closed shape made of a right half that runs from the centre line round to the centre line, and its mirror image. */
function mirroredWhole(rightHalf: Path): Path {
  return closed(joined(rightHalf, mirroredPath(reversedPath(rightHalf))));
}

/** Both halves of a line that ends on the centre line. */
function whole(rightHalf: Path): Path {
  const toCentre = Math.abs(lastX(rightHalf)) < 1e-9 ? rightHalf : reversedPath(rightHalf);
  return joined(toCentre, reversedPath(mirroredPath(toCentre)));
}

function paired(name: FlatLineName, path: Path): { line: FlatLineName; path: Path }[] {
  return bothSides(path).map((each) => ({ line: name, path: each }));
}

function bothSides(path: Path): [Path, Path] {
  return [path, mirroredPath(path)];
}

function closed(path: Path): Path {
  return [...path, close];
}

function lastX(path: Path): number {
  return flattened(path).at(-1)?.at(-1)?.x ?? Number.NaN;
}

function lowestPoint(path: Path): number {
  return Math.max(
    ...flattened(path)
      .flat()
      .map(({ y }) => y),
  );
}
