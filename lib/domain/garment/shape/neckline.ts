import { curve, endOf, line, move, type Path, reversedPath } from '../../geometry/path';
import { along, between, distance, type Point } from '../../geometry/point';
import type { Tape } from '../kind-design';
import { chained, pointsAlong, startOf, straight, swept } from './curves';
import { band, lineOf, mirroredWhole, pairOf, partOf, whole } from './drawn';
import { ribKnit } from './rib';
import { SHOULDER_RAD, type TopFrame } from './top-frame';
import type { BodySide, Neck } from './top-pieces';

/** The right half of a neck seam, from a place at the shoulder to the centre line at a depth. */
export type NeckCurve = (from: Point, dropMm: number) => Path;

/** A round neck seam that meets the centre line square. */
export const roundNeck: NeckCurve = (from, dropMm) => {
  const fall = dropMm - from.y;
  return [
    move(from),
    curve({ x: from.x * 0.98, y: from.y + fall * 0.56 }, { x: from.x * 0.58, y: dropMm }, { x: 0, y: dropMm }),
  ];
};

/** A V, a little bowed outwards near the shoulder, that runs straight into the centre line from 45 % of its way. */
export const veeNeck: NeckCurve = (from, dropMm) => veeFrom(from, { x: 0, y: dropMm }, null);

/** The bowed part down to `straightFrom`, or to a place of its own, then straight to the point of the V. */
function veeFrom(from: Point, point: Point, straightFrom: Point | null): Path {
  const bend = straightFrom ?? between({ x: from.x * 0.96, y: from.y }, point, 0.45);
  const upwards = Math.atan2(bend.y - point.y, bend.x - point.x);
  const reach = distance(from, bend);
  const outwards = between(from, bend, 0.34);
  return [
    move(from),
    curve({ x: outwards.x + reach * 0.06, y: outwards.y }, along(bend, upwards, reach * 0.3), bend),
    line(point),
  ];
}

/** How steeply a rib stands up from the end of the shoulder seam, for looks. */
const RIB_STANDS_RAD = SHOULDER_RAD + Math.PI + 0.24;
/** How steeply it turns down again into its back edge, for looks: the deeper the back is cut, the steeper. */
const RIB_TURNS = 1.9;

/** A neck with a rib sewn on: `collarRib` deep at the centre of the front and of the back. */
export function ribbedNeck(tape: Tape, { neck }: TopFrame, side: BodySide, frontCurve = roundNeck): Neck {
  const rib = tape('collarRib');
  const crest = along(neck, RIB_STANDS_RAD, rib);
  const backSeam = roundNeck(neck, tape('backNeckDrop'));
  const { overCrest, backEdge } = rolledRib(neck, crest, tape('backNeckDrop') - rib);
  const front = side === 'front';
  const frontSeam = frontCurve(neck, tape('frontNeckDrop'));
  const seam = front ? frontSeam : backSeam;
  const edge = front ? ribEdge(frontSeam, crest, rib) : backEdge;
  const ribPath = mirroredWhole(chained(reversedPath(edge), reversedPath(overCrest), seam));
  return {
    seam,
    top: chained(reversedPath(backEdge), reversedPath(overCrest)),
    behind: front
      ? {
          parts: [partOf('insideBack', band(backEdge, edge))],
          lines: [lineOf('innerCollar', whole(within(backSeam, edge)))],
        }
      : { parts: [], lines: [] },
    over: {
      parts: [partOf('rib', ribPath)],
      lines: [
        ...pairOf('ribKnit', ribKnit(edge, seam)),
        ...(front ? [lineOf('collarEdge', whole(edge))] : []),
        lineOf('ribKnit', straight(endOf(edge), endOf(seam))),
        ...pairOf('ribKnit', straight(crest, neck)),
        lineOf('collarSeam', whole(seam)),
      ],
    },
    points: { collarSeamCentre: { x: 0, y: tape(front ? 'frontNeckDrop' : 'backNeckDrop') }, highPointShoulder: neck },
  };
}

/** A rib rolling over at the shoulder: up from the neck seam to its crest, and on along its free edge across the back. */
function rolledRib(neck: Point, crest: Point, backY: number): { overCrest: Path; backEdge: Path } {
  const fall = backY - crest.y;
  const turnsRad = Math.PI - Math.min(1.4, Math.atan2(fall, crest.x) * RIB_TURNS);
  const out = along(crest, turnsRad, crest.x * 0.22 + fall * 0.32);
  return {
    overCrest: swept(neck, RIB_STANDS_RAD + 0.3, 0.42, crest, turnsRad, 0.34),
    backEdge: [move(crest), curve(out, { x: crest.x * 0.55, y: backY }, { x: 0, y: backY })],
  };
}

/** The free edge of a rib: beside the seam's straight run where it has one, otherwise the same curve higher up. */
function ribEdge(seam: Path, ribTop: Point, ribMm: number): Path {
  const [, bend, foot] = seam;
  if (bend?.step !== 'curve' || foot?.step !== 'line') {
    return roundNeck(ribTop, endOf(seam).y - ribMm);
  }
  const runRad = Math.atan2(foot.to.y - bend.to.y, foot.to.x - bend.to.x);
  const inner = along(bend.to, runRad + Math.PI / 2, ribMm);
  return veeFrom(ribTop, { x: 0, y: foot.to.y - ribMm / Math.abs(Math.cos(runRad)) }, inner);
}

/** The part of a right-half line from where it comes in under an edge to the centre line, as a run of short pieces. */
export function within(path: Path, edge: Path): Path {
  const limits = pointsAlong(edge, 80);
  const inside = pointsAlong(path, 80).filter((point) => isAbove(point, limits));
  const [first, ...rest] = inside;
  return first ? [move(first), ...rest.map(line)] : [move(startOf(path)), line({ x: 0, y: endOf(path).y })];
}

/** True where the point lies on the centre line's side of a right-half edge that runs down to the centre line. */
function isAbove(point: Point, edge: readonly Point[]): boolean {
  const below = edge.findIndex(({ y }) => y >= point.y);
  const [a, b] = [edge[below - 1], edge[below]];
  if (below < 0 || !b) return false;
  if (!a || a.y === b.y) return point.x <= b.x;
  return point.x < a.x + ((b.x - a.x) * (point.y - a.y)) / (b.y - a.y);
}
