import { endOf, type Path, reversedPath } from '../../geometry/path';
import { along, between, distance, type Point } from '../../geometry/point';
import type { Tape } from '../kind-design';
import { armholeCurve } from './armhole';
import { bent, chained, cutAtHeight, startOf, straight, swept } from './curves';
import { closed, type Drawn, pairOf, partPair } from './drawn';
import { type LaidSleeve, laidClear } from './laid-sleeve';
import { cuffCorners, cuffDrawn, hemmedEnd } from './sleeve-end';
import { SHOULDER_RAD, type TopFrame } from './top-frame';
import type { Arm, OnBody, SleeveEnd } from './top-pieces';

/** How steeply a long sleeve is laid down beside the body, clockwise from level; for looks. */
const LONG_SLEEVE_FALL_RAD = 1.1;
/** How much steeper its end lies than its whole; for looks. */
const WRIST_TURN_RAD = 0.1;

/** How far under the underarm a sleeve laid beside the body leaves it, as a share of the height of the armhole. */
const LEAVES_BELOW = 0.36;
/** A long set-in sleeve laid down beside the body, hemmed or ended with a rib `cuffRib` deep. */
export function longSleeve(tape: Tape, { frame, sideSeam }: OnBody, end: SleeveEnd = 'rib'): Arm {
  const armhole = armholeCurve(frame);
  const sleeve = hangingSleeve(tape, frame, sideSeam, 'shoulder', end);
  return {
    armhole,
    outline: sleeve.outline,
    sideBelow: sleeve.sideBelow,
    shoulderSeam: true,
    behind: {
      parts: [
        ...partPair(
          'sleeve',
          closed(chained(sleeve.outline, straight(sleeve.leaves, frame.underarm), reversedPath(armhole))),
        ),
        ...sleeve.ended.parts,
      ],
      lines: [],
    },
    over: {
      parts: [],
      lines: [
        ...sleeve.ended.lines,
        ...pairOf('armhole', armhole),
        ...sleeve.folds.flatMap((fold) => pairOf('fold', fold)),
      ],
    },
  };
}

/** A sleeve laid down beside the body: outline from `from` along the fold, round its end and back to the body. */
export type HangingSleeve = {
  readonly outline: Path;
  readonly sideBelow: Path;
  readonly leaves: Point;
  readonly ended: Drawn;
  readonly folds: readonly Path[];
};

/** Lays a sleeve down from the end of the shoulder, or from the neck where it is a raglan's. */
export function hangingSleeve(
  tape: Tape,
  frame: TopFrame,
  side: Path,
  from: 'shoulder' | 'neck',
  end: SleeveEnd,
): HangingSleeve {
  const { underarm, shoulder } = frame;
  const at = sleeveEnds(tape, frame, from);
  // A sleeve leaves the body well above the hem, and above its own end.
  const down = Math.min(
    (underarm.y - shoulder.y) * LEAVES_BELOW,
    (endOf(side).y - underarm.y) * 0.6,
    (at.bottom.y - (end === 'rib' ? tape('cuffRib') : 0) - underarm.y) * 0.4,
  );
  const [, sideBelow] = cutAtHeight(side, underarm.y + Math.max(1, down));
  const leaves = startOf(sideBelow);
  const wristRad = at.fallRad + WRIST_TURN_RAD;
  const cuff = end === 'rib' ? cuffCorners(tape, at.top, at.bottom, wristRad) : null;
  const [sleeveTop, sleeveBottom] = cuff ? [cuff.sleeveTop, cuff.sleeveBottom] : [at.top, at.bottom];
  const endEdge = straight(at.top, at.bottom);
  const upper = upperEdge(frame, from, sleeveTop, wristRad);
  const under = underEdge(sleeveBottom, leaves, endOf(side), wristRad);
  const round = cuff ? chained(cuff.over, endEdge, cuff.back) : endEdge;
  const drawn = cuff ? cuffDrawn(cuff.seam, endEdge) : hemmedEnd(tape, at.top, at.bottom, under, wristRad);
  return {
    outline: chained(upper, round, under),
    sideBelow,
    leaves,
    ended: { ...drawn, lines: [...drawn.lines, ...pairOf('sleeveHem', endEdge)] },
    folds: hangingFolds(leaves, sleeveBottom, underarm, wristRad),
  };
}

/** Where the end of a sleeve laid down lies. */
function sleeveEnds(tape: Tape, frame: TopFrame, from: 'shoulder' | 'neck'): LaidSleeve {
  const [length, opening] = [tape('sleeveLength'), tape('sleeveOpening')];
  const { neck, shoulder } = frame;
  return laidClear(LONG_SLEEVE_FALL_RAD, frame, length, (steepRad) => {
    const fallRad = from === 'neck' ? raglanFall(length, neck, shoulder, steepRad) : steepRad;
    const top = along(from === 'neck' ? neck : shoulder, fallRad, length);
    return { top, bottom: along(top, fallRad + WRIST_TURN_RAD + Math.PI / 2, opening), fallRad };
  });
}

/** A raglan sleeve falls from the shoulder's bend as others do, however far out the bend lies. */
function raglanFall(length: number, neck: Point, shoulder: Point, steepRad: number): number {
  const out = distance(neck, shoulder);
  const rest = Math.max(length * 0.2, length - out);
  const [x, y] = [
    Math.cos(SHOULDER_RAD) * out + Math.cos(steepRad) * rest,
    Math.sin(SHOULDER_RAD) * out + Math.sin(steepRad) * rest,
  ];
  return Math.atan2(y, x);
}

/** The fold: out over the shoulder, then down. */
function upperEdge({ neck, shoulder }: TopFrame, from: 'shoulder' | 'neck', sleeveTop: Point, wristRad: number): Path {
  if (from === 'shoulder') return swept(shoulder, SHOULDER_RAD + 0.2, 0.22, sleeveTop, wristRad - 0.02, 0.5);
  const bend = between(neck, shoulder, 0.7);
  return chained(straight(neck, bend), swept(bend, SHOULDER_RAD, 0.24, sleeveTop, wristRad, 0.42));
}

/** The underarm seam, from the end of the sleeve up to where it leaves the body, bowed no further than the side allows. */
function underEdge(sleeveBottom: Point, leaves: Point, sideFoot: Point, wristRad: number): Path {
  const chordRad = directionRad(sleeveBottom, leaves);
  const room = Math.abs(turnRad(chordRad, directionRad(sideFoot, leaves))) * 0.6;
  const turn = (rad: number, usual: number) => {
    const most = Math.min(usual, room);
    return chordRad + Math.max(-most, Math.min(most, turnRad(chordRad, rad)));
  };
  return swept(sleeveBottom, turn(wristRad + Math.PI, 0.3), 0.4, leaves, turn(wristRad + Math.PI + 0.12, 0.34), 0.35);
}

function directionRad(from: Point, to: Point): number {
  return Math.atan2(to.y - from.y, to.x - from.x);
}

/** The turn from one direction to another, within half a turn either way. */
function turnRad(fromRad: number, toRad: number): number {
  return Math.atan2(Math.sin(toRad - fromRad), Math.cos(toRad - fromRad));
}

function hangingFolds(leaves: Point, sleeveBottom: Point, underarm: Point, wristRad: number): Path[] {
  const reach = distance(leaves, sleeveBottom);
  const elbow = between(leaves, sleeveBottom, 0.42);
  return [
    bent(underarm, along(leaves, wristRad - Math.PI / 2 + 0.55, reach * 0.1), -0.1),
    bent(elbow, along(elbow, wristRad - Math.PI / 2 - 0.5, reach * 0.16), 0.12),
    bent(along(elbow, wristRad, reach * 0.05), along(elbow, wristRad - Math.PI / 2 - 0.1, reach * 0.13), 0.1),
  ];
}
