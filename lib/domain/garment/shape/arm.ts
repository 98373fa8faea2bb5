import { endOf, line, move, type Path, reversedPath } from '../../geometry/path';
import { along, between, distance, type Point } from '../../geometry/point';
import type { Tape } from '../kind-design';
import { bent, chained, cutAtHeight, startOf, straight, swept } from './curves';
import { closed, type Drawn, pairOf, partPair, stacked } from './drawn';
import { STITCH_ROWS_MM } from './hem';
import { ribKnit } from './rib';
import { SHOULDER_RAD, type TopFrame } from './top-frame';
import type { Arm, OnBody, SleeveEnd } from './top-pieces';

/** Share of the opening that a short sleeve spans across the armhole; it sets how steeply the sleeve falls. */
const SHORT_SLEEVE_SPREAD = 0.92;
/** How steeply a long sleeve is laid down beside the body, clockwise from level; for looks. */
const LONG_SLEEVE_FALL_RAD = 1.1;
/** How much steeper its end lies than its whole; for looks. */
const WRIST_TURN_RAD = 0.1;

/** Shoulder point to underarm: close to upright at the shoulder, sweeping out underneath. */
export function armholeCurve({ shoulder, underarm }: TopFrame, depth = 1): Path {
  const height = underarm.y - shoulder.y;
  const inset = height * 0.075 * depth;
  return [
    move(shoulder),
    {
      step: 'curve',
      c1: { x: shoulder.x - inset, y: shoulder.y + height * 0.36 },
      c2: { x: shoulder.x - inset * 0.4, y: underarm.y - height * 0.16 },
      to: underarm,
    },
  ];
}

/** A short set-in sleeve: hemmed, or ended with a rib `cuffRib` deep. */
export function shortSleeve(tape: Tape, { frame, sideSeam }: OnBody, end: SleeveEnd = 'hem'): Arm {
  const { shoulder, underarm } = frame;
  const armhole = armholeCurve(frame);
  const opening = tape('sleeveOpening');
  const armholeRad = Math.atan2(underarm.y - shoulder.y, underarm.x - shoulder.x);
  const spread = Math.min(0.98, (opening * SHORT_SLEEVE_SPREAD) / distance(shoulder, underarm));
  const length = tape('sleeveLength');
  const laid = laidClear(Math.min(1.2, armholeRad - Math.asin(spread)), frame, length, (fallRad) => {
    const top = along(shoulder, fallRad, length);
    return { top, bottom: along(top, fallRad + Math.PI / 2, opening) };
  });
  const { top, bottom, fallRad } = laid;
  const upper = swept(shoulder, fallRad - 0.16, 0.3, top, fallRad, 0.4);
  const under = swept(
    bottom,
    Math.atan2(underarm.y - bottom.y, underarm.x - bottom.x) + 0.02,
    0.4,
    underarm,
    Math.PI + 0.5,
    0.15,
  );
  const outline = chained(upper, straight(top, bottom), under);
  const ended = end === 'hem' ? hemmedEnd(top, bottom, under, fallRad) : ribbedEnd(tape, top, bottom, under, fallRad);
  return {
    armhole,
    outline,
    sideBelow: sideSeam,
    shoulderSeam: true,
    behind: stacked(
      { parts: partPair('sleeve', closed(chained(outline, reversedPath(armhole)))), lines: [] },
      { parts: ended.parts, lines: [] },
    ),
    over: {
      parts: [],
      lines: [
        ...ended.lines,
        ...pairOf('armhole', armhole),
        ...pairOf('sleeveHem', straight(top, bottom)),
        ...shortSleeveFolds(frame, under, length).flatMap((fold) => pairOf('fold', fold)),
      ],
    },
  };
}

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

/** How far under the underarm a sleeve laid beside the body leaves it, as a share of the height of the armhole. */
const LEAVES_BELOW = 0.36;
/** How clear of the body a sleeve's end is laid, as a share of its length; for looks. */
const CLEAR_SHARE = 0.09;

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
  const leavesY = underarm.y + (underarm.y - shoulder.y) * LEAVES_BELOW;
  const [, sideBelow] = cutAtHeight(side, Math.min(leavesY, endOf(side).y - 1));
  const leaves = startOf(sideBelow);
  const at = sleeveEnds(tape, frame, from);
  const wristRad = at.fallRad + WRIST_TURN_RAD;
  const cuff = end === 'rib' ? cuffCorners(tape, at.top, at.bottom, wristRad) : null;
  const [sleeveTop, sleeveBottom] = cuff ? [cuff.sleeveTop, cuff.sleeveBottom] : [at.top, at.bottom];
  const endEdge = straight(at.top, at.bottom);
  const upper = upperEdge(frame, from, sleeveTop, wristRad);
  const under = underEdge(sleeveBottom, leaves, endOf(side), wristRad);
  const round = cuff ? chained(cuff.over, endEdge, cuff.back) : endEdge;
  const drawn = cuff ? cuffDrawn(cuff.seam, endEdge) : hemmedEnd(at.top, at.bottom, under, wristRad);
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

type LaidSleeve = { readonly top: Point; readonly bottom: Point; readonly fallRad: number };

/** Lays a sleeve as steeply as asked for, or less so that its end lies clear of the body. */
function laidClear(
  steepestRad: number,
  { underarm, hem }: TopFrame,
  lengthMm: number,
  laid: (steepRad: number) => Omit<LaidSleeve, 'fallRad'> & Partial<LaidSleeve>,
): LaidSleeve {
  const clearX = Math.max(underarm.x, hem.x) + lengthMm * CLEAR_SHARE;
  for (let steepRad = steepestRad; ; steepRad -= 0.02) {
    const ends = laid(steepRad);
    if (ends.bottom.x >= clearX || steepRad < -0.2) return { fallRad: steepRad, ...ends };
  }
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

/** A knitted cuff at the end of a sleeve that spills over it. */
function cuffCorners(tape: Tape, top: Point, bottom: Point, wristRad: number) {
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

function hemmedEnd(top: Point, bottom: Point, under: Path, fallRad: number): Drawn {
  const second = under[1];
  const next = second?.step === 'curve' ? second.to : bottom;
  const reach = distance(bottom, next);
  const rows = STITCH_ROWS_MM.map((fromEdge): Path => {
    const start = along(top, fallRad + Math.PI, fromEdge);
    const end = between(bottom, next, Math.min(0.8, fromEdge / Math.max(reach, 1)));
    return [move(start), line(end)];
  });
  return { parts: [], lines: rows.flatMap((row) => pairOf('sleeveStitch', row)) };
}

function ribbedEnd(tape: Tape, top: Point, bottom: Point, under: Path, fallRad: number): Drawn {
  const second = under[1];
  const next = second?.step === 'curve' ? second.to : bottom;
  const depth = tape('cuffRib');
  const seamTop = along(top, fallRad + Math.PI, depth);
  const seamBottom = between(bottom, next, Math.min(0.8, depth / Math.max(1, distance(bottom, next))));
  return cuffDrawn(straight(seamTop, seamBottom), straight(top, bottom));
}

function cuffDrawn(seam: Path, edge: Path): Drawn {
  return {
    parts: partPair('rib', closed(chained(seam, reversedPath(edge)))),
    lines: [...pairOf('ribKnit', ribKnit(seam, edge)), ...pairOf('cuffSeam', seam)],
  };
}

/** Creases that the cloth of the right half falls into where sleeve and body meet; for looks. */
function shortSleeveFolds({ shoulder, underarm }: TopFrame, under: Path, lengthMm: number): Path[] {
  const reach = distance(shoulder, underarm);
  const inSleeve = between(underarm, startOf(under), 0.12);
  const sleeveEnd = along(inSleeve, -0.75, Math.min(reach * 0.3, lengthMm * 0.34));
  const inBody = { x: underarm.x - 1, y: underarm.y + reach * 0.05 };
  const bodyEnd = { x: underarm.x - reach * 0.22, y: underarm.y + reach * 0.2 };
  return [bent(inSleeve, sleeveEnd, 0.1), bent(inBody, bodyEnd, 0.1)];
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
