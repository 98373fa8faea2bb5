import { curve, move, type Path, reversedPath } from '../../geometry/path';
import { along, between, type Point } from '../../geometry/point';
import type { Tape } from '../kind-design';
import { chained } from './curves';
import { band, closed, lineOf, mirroredWhole, pairOf, partOf, partPair, whole } from './drawn';
import { roundNeck, within } from './neckline';
import { ribKnit } from './rib';
import { onShoulder, SHOULDER_RAD, type TopFrame } from './top-frame';
import type { BodySide, Neck } from './top-pieces';

/** How far a collar's fold stands above the neck seam, as a share of its fall; for looks. */
const STAND_SHARE = 0.5;

/** A knitted collar turned down: `collarFall` from its fold to its edge at the centre back. */
export function poloCollar(tape: Tape, frame: TopFrame, side: BodySide): Neck {
  return side === 'front' ? collarFront(tape, frame) : collarBack(tape, frame);
}

/** The point of the collar's right leaf; its front edge runs there straight from the neck seam at the centre. */
export function collarTip(tape: Tape): Point {
  const fall = tape('collarFall');
  return { x: tape('neckWidth') * 0.25 + fall * 0.12, y: tape('frontNeckDrop') + fall * 0.74 };
}

/** Where the fold of the collar passes over the shoulder, and where its edge lies on it. */
function overShoulder(tape: Tape, { neck, shoulder }: TopFrame) {
  const fall = tape('collarFall');
  const fold = along(neck, SHOULDER_RAD + Math.PI + 0.9, fall * 0.26);
  const edge = onShoulder(neck, neck.x + Math.min(fall * 0.46, (shoulder.x - neck.x) * 0.45));
  return { fold, edge };
}

/** Height of the collar's fold at the centre back. */
function foldY(tape: Tape): number {
  return tape('backNeckDrop') - tape('collarFall') * STAND_SHARE;
}

function collarFront(tape: Tape, frame: TopFrame): Neck {
  const { neck } = frame;
  const [drop, fall] = [tape('frontNeckDrop'), tape('collarFall')];
  const { fold, edge } = overShoulder(tape, frame);
  const meet = { x: 0, y: drop };
  const tip = collarTip(tape);
  const frontFold: Path = [
    move(fold),
    curve({ x: fold.x * 0.97, y: fold.y + (meet.y - fold.y) * 0.42 }, { x: neck.x * 0.4, y: meet.y - 18 }, meet),
  ];
  const leafFront: Path = [move(meet), curve(between(meet, tip, 0.3), between(meet, tip, 0.7), tip)];
  const leafEdge: Path = [
    move(tip),
    curve({ x: tip.x + fall * 0.2, y: tip.y - fall * 0.42 }, { x: edge.x - fall * 0.1, y: edge.y + fall * 0.5 }, edge),
  ];
  const overTop: Path = [move(edge), curve({ x: edge.x - 4, y: edge.y - 10 }, { x: fold.x + 8, y: fold.y }, fold)];
  const backFold = roundNeck(fold, foldY(tape));
  const backSeam = roundNeck(neck, tape('backNeckDrop'));
  return {
    seam: roundNeck(neck, drop),
    top: chained(reversedPath(backFold), reversedPath(overTop)),
    behind: { parts: [], lines: [] },
    over: {
      parts: [
        partOf('insideBack', band(backFold, frontFold)),
        ...partPair('collar', closed(chained(frontFold, leafFront, leafEdge, overTop))),
      ],
      lines: [
        lineOf('innerCollar', whole(within(backSeam, frontFold))),
        lineOf('coveredSeam', whole(roundNeck(neck, drop))),
        lineOf('innerCollar', whole(frontFold)),
        ...pairOf('collarEdge', chained(leafFront, leafEdge)),
      ],
    },
    points: { collarSeamCentre: { x: 0, y: drop }, highPointShoulder: neck },
  };
}

function collarBack(tape: Tape, frame: TopFrame): Neck {
  const { neck } = frame;
  const { fold, edge } = overShoulder(tape, frame);
  const top = roundNeck(fold, foldY(tape));
  const lower = foldY(tape) + tape('collarFall');
  const overTop: Path = [move(fold), curve({ x: fold.x + 8, y: fold.y }, { x: edge.x - 4, y: edge.y - 10 }, edge)];
  const fallEdge: Path = [
    move(edge),
    curve({ x: edge.x * 0.9, y: edge.y + (lower - edge.y) * 0.72 }, { x: neck.x * 0.6, y: lower }, { x: 0, y: lower }),
  ];
  const seam = roundNeck(neck, tape('backNeckDrop'));
  return {
    seam,
    top: chained(reversedPath(top), overTop),
    behind: { parts: [], lines: [] },
    over: {
      parts: [partOf('collar', mirroredWhole(chained(reversedPath(top), overTop, fallEdge)))],
      lines: [
        ...pairOf('ribKnit', ribKnit(chained(top), fallEdge, 9)),
        lineOf('coveredSeam', whole(seam)),
        lineOf('collarEdge', whole(fallEdge)),
      ],
    },
    points: { collarSeamCentre: { x: 0, y: tape('backNeckDrop') }, highPointShoulder: neck },
  };
}
