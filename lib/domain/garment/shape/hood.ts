import { curve, move, type Path, reversedPath } from '../../geometry/path';
import { between, type Point } from '../../geometry/point';
import type { Tape } from '../kind-design';
import { bent, beside, chained, circle, startOf, straight } from './curves';
import {
  band,
  closed,
  type Drawn,
  lineOf,
  mirroredWhole,
  NOTHING_DRAWN,
  pairOf,
  partOf,
  partPair,
  whole,
} from './drawn';
import { roundNeck, within } from './neckline';
import { rectangle } from './rectangle';
import { onShoulder, type TopFrame } from './top-frame';
import type { BodySide, Neck } from './top-pieces';

/** Share of its height above the shoulders at which a hood standing up is widest. */
const WIDEST_AT = 0.52;
/** Depth of the hem round the face opening, mm: about 7/8 in (common practice, no source). */
const CASING_MM = 22;
/** How far above the neck seam the two edges of the opening meet, mm; for looks. */
const FOOT_UP_MM = 10;
const CORD_MM = 5;
/** How far the folded hood stands above the shoulders at the back, mm; for looks. */
const ROLL_MM = 26;
/** From this body length up a cord is drawn: cords are restricted on children's hoods (16 CFR 1120). */
const CORD_FROM_LENGTH_MM = 26.5 * 25.4;
/** How far the ends of a cord hang below the neck seam, clear of the usual place of a print; for looks. */
const CORD_HANGS_MM = 50;

/** A hood, seen standing up from the front and lying down the back from behind. */
export function hood(tape: Tape, frame: TopFrame, side: BodySide): Neck {
  return side === 'front' ? standingHood(tape, frame) : lyingHood(tape, frame);
}

/**
 * Right half of the hood's own edge from where it leaves the shoulder up to its top: `hoodWidth` across, `hoodHeight`
 * above the neck seam. Its foot lies on the shoulder a little out from the neck and rises from it in one bend.
 */
function standingEdge(tape: Tape, frame: TopFrame): Path {
  const foot = leavesShoulder(tape, frame);
  const top = { x: 0, y: tape('frontNeckDrop') - tape('hoodHeight') };
  const widest = { x: tape('hoodWidth') / 2, y: top.y * WIDEST_AT };
  return [
    move(foot),
    curve(
      { x: foot.x - Math.min(12, foot.x - frame.neck.x), y: foot.y + (widest.y - foot.y) * 0.34 },
      { x: widest.x, y: foot.y + (widest.y - foot.y) * 0.52 },
      widest,
    ),
    curve({ x: widest.x, y: top.y * 0.84 }, { x: widest.x * 0.6, y: top.y }, top),
  ];
}

/** Where a hood leaves the shoulder: never further out than the hood is wide. */
function leavesShoulder(tape: Tape, { neck, shoulder }: TopFrame): Point {
  const out = Math.min(14, (shoulder.x - neck.x) * 0.3, Math.max(0, tape('hoodWidth') / 2 - neck.x) * 0.7);
  return onShoulder(neck, neck.x + out);
}

function standingHood(tape: Tape, frame: TopFrame): Neck {
  const { neck } = frame;
  const drop = tape('frontNeckDrop');
  const seam = roundNeck(neck, drop);
  const edge = standingEdge(tape, frame);
  const opening = faceOpening(tape);
  const topY = drop - tape('hoodHeight');
  const inside = mirroredWhole(opening);
  const cord = cords(tape);
  const backSeam = roundNeck(neck, tape('backNeckDrop'));
  return {
    seam,
    top: reversedPath(edge),
    behind: { parts: [], lines: [] },
    over: {
      parts: [
        partOf('hood', mirroredWhole(chained(reversedPath(edge), straight(startOf(edge), neck), seam))),
        partOf('insideBack', inside),
        ...cord.parts,
      ],
      lines: [
        lineOf('innerCollar', whole(within(backSeam, upperFirst(opening)))),
        lineOf('innerCollar', straight({ x: 0, y: topY + openingTop(tape) }, { x: 0, y: tape('backNeckDrop') })),
        lineOf('hoodSeam', whole(reversedPath(opening))),
        ...pairOf(
          'stitch',
          within(beside(opening, -CASING_MM), chained(reversedPath(edge), straight(startOf(edge), neck), seam)),
        ),
        lineOf('hoodSeam', bent({ x: 0, y: drop - FOOT_UP_MM }, { x: 7, y: drop }, 0.1)),
        lineOf('collarSeam', whole(seam)),
        ...cord.lines,
      ],
    },
    points: { collarSeamCentre: { x: 0, y: drop }, highPointShoulder: neck },
  };
}

/** How far the face opening's top lies below the top of the hood. */
function openingTop(tape: Tape): number {
  return 14 + tape('hoodHeight') * 0.1;
}

/** Right half of the face opening from its top round to where the two edges meet above the neck seam. */
function faceOpening(tape: Tape): Path {
  const drop = tape('frontNeckDrop');
  const top = { x: 0, y: drop - tape('hoodHeight') + openingTop(tape) };
  const foot = { x: 0, y: drop - FOOT_UP_MM };
  const widest = { x: tape('hoodWidth') / 2 - 34, y: between(top, foot, 0.42).y };
  return [
    move(top),
    curve({ x: widest.x * 0.62, y: top.y }, { x: widest.x, y: between(top, widest, 0.45).y }, widest),
    curve(
      { x: widest.x, y: between(widest, foot, 0.5).y },
      { x: widest.x * 0.3, y: between(widest, foot, 0.86).y },
      foot,
    ),
  ];
}

/** The lower curve of the opening, from its widest place to its foot, as a line to cut others with. */
function upperFirst(opening: Path): Path {
  const [, first, second] = opening;
  if (first?.step !== 'curve' || second?.step !== 'curve') throw new Error('a face opening is two curves');
  return [move(first.to), second];
}

/** A cord out of each side of the casing, knotted by its metal end. */
function cords(tape: Tape): Drawn {
  if (tape('bodyLength') < CORD_FROM_LENGTH_MM) return NOTHING_DRAWN;
  const drop = tape('frontNeckDrop');
  const eye = { x: 33, y: drop - 27 };
  const end = { x: 36, y: drop + CORD_HANGS_MM };
  const middle: Path = [move(eye), curve({ x: 42, y: drop - 6 }, { x: 31, y: drop + 18 }, end)];
  const edges = [beside(middle, CORD_MM / 2), beside(middle, -CORD_MM / 2)] as const;
  const tip = rectangle({ x: end.x - 3.2, y: end.y - 2 }, { x: end.x + 3.2, y: end.y + 13 });
  return {
    parts: [...partPair('strap', closed(chained(edges[0], reversedPath(edges[1])))), ...partPair('metal', tip)],
    lines: [
      ...edges.flatMap((edge) => pairOf('drawcord', edge)),
      ...pairOf('drawcord', tip),
      ...pairOf('eyelet', circle(eye, 4.4)),
    ],
  };
}

/**
 * The hood seen from behind, lying down the back: it begins where it leaves the shoulders, and its lower edge lies
 * `hoodFall` below the back neck seam, which it covers.
 */
function lyingHood(tape: Tape, frame: TopFrame): Neck {
  const { neck } = frame;
  const drop = tape('backNeckDrop');
  const seam = roundNeck(neck, drop);
  const leaves = leavesShoulder(tape, frame);
  const foot = { x: 0, y: drop + tape('hoodFall') };
  const widest = { x: Math.min(tape('hoodWidth') / 2, frame.shoulder.x * 0.86), y: between(leaves, foot, 0.34).y };
  const lower: Path = [
    move(leaves),
    curve(
      { x: leaves.x + (widest.x - leaves.x) * 0.8, y: leaves.y + 6 },
      { x: widest.x, y: between(leaves, widest, 0.46).y },
      widest,
    ),
    curve({ x: widest.x, y: between(widest, foot, 0.46).y }, { x: widest.x * 0.5, y: foot.y }, foot),
  ];
  const upper: Path = [
    move(leaves),
    curve({ x: neck.x * 0.94, y: -ROLL_MM * 0.9 }, { x: neck.x * 0.5, y: -ROLL_MM }, { x: 0, y: -ROLL_MM }),
  ];
  return {
    seam,
    top: reversedPath(upper),
    behind: { parts: [], lines: [] },
    over: {
      parts: [partOf('hood', band(upper, lower))],
      lines: [
        lineOf('hoodSeam', straight({ x: 0, y: -ROLL_MM }, foot)),
        ...pairOf('stitch', straight({ x: 6, y: -ROLL_MM }, { x: 6, y: foot.y - 0.5 })),
        lineOf('coveredSeam', whole(seam)),
        ...lyingFolds(leaves, widest, foot),
        lineOf('hoodEdge', whole(lower)),
      ],
    },
    points: { collarSeamCentre: { x: 0, y: drop }, highPointShoulder: neck },
  };
}

function lyingFolds(leaves: Point, widest: Point, foot: Point) {
  const inner = { x: leaves.x * 0.86, y: leaves.y - 2 };
  return [
    ...pairOf('fold', bent(inner, { x: widest.x * 0.62, y: between(widest, foot, 0.45).y }, -0.1)),
    ...pairOf(
      'fold',
      bent({ x: leaves.x * 0.6, y: leaves.y + 6 }, { x: widest.x * 0.34, y: between(widest, foot, 0.3).y }, -0.08),
    ),
  ];
}
