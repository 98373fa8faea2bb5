import { close, curve, move, type Path, reversedPath } from '../../geometry/path';
import type { KindDesign, Tape } from '../kind-design';
import { assembled } from '../shape/assembled';
import { beside, chained, cutAtHeight, startOf, straight } from '../shape/curves';
import { closed, lineOf, mirroredWhole, pairOf, partOf, partPair, whole } from '../shape/drawn';
import { PANEL_CHECKS } from './plain-panel';
import { of } from './top-estimates';

/** How far the brim seam falls towards the ends of the front panel, as a share of its width; for looks. */
const SEAM_FALL = 0.055;
/** Width of what shows of each side panel beside the front one, as a share of its width; for looks. */
const SIDE_SHOWS = 0.055;
/** Distance of the stitching from a seam, mm; for looks. */
const STITCH_MM = 4;
/** Places of the rows of stitching on the brim, from its seam to its edge. */
const BRIM_ROWS = [0.2, 0.4, 0.6, 0.8];

/** A cap seen from the front: only its front panel is decorated (proportions: common practice, no source). */
export const capFront: KindDesign = {
  sides: ['front'],
  required: ['panelWidth', 'panelHeight'],
  estimates: {
    brimWidth: of('panelWidth', 8, 1.16),
    brimDepth: of('panelWidth', 6, 0.32),
  },
  checks: [
    ...PANEL_CHECKS,
    (tape) =>
      tape('brimWidth') < tape('panelWidth') * 1.06 ? { reason: 'partTooLarge', measure: 'panelWidth' } : null,
    (tape) => (tape('brimWidth') > tape('panelWidth') * 1.5 ? { reason: 'partTooLarge', measure: 'brimWidth' } : null),
  ],
  draw: (tape, side) => {
    const crown = crownOf(tape);
    const brim = brimOf(tape, crown.seam);
    const panel = mirroredWhole(chained(crown.panelTop, crown.panelSeam, crown.seam));
    const outline = mirroredWhole(chained(crown.panelTop, crown.side, crown.rim, brim.edge));
    const button = buttonOf(tape);
    return assembled(
      side,
      {
        parts: [
          ...partPair('side', closed(chained(reversedPath(crown.panelSeam), crown.side, crown.rim))),
          partOf('collar', mirroredWhole(chained(reversedPath(crown.seam), brim.edge))),
          partOf('body', panel),
          partOf('button', button),
        ],
        lines: [
          ...brim.rows.map((row) => lineOf('stitch', whole(row))),
          ...pairOf('stitch', crown.panelStitch),
          ...pairOf('panelSeam', crown.panelSeam),
          lineOf('topEdge', whole(reversedPath(crown.panelTop))),
          lineOf('stitch', whole(raisedBy(crown.seam, STITCH_MM))),
          lineOf('brimSeam', whole(crown.seam)),
          lineOf('brimEdge', whole(brim.edge)),
          lineOf('button', button),
        ],
      },
      outline,
      { brimSeamCentre: { x: 0, y: tape('panelHeight') }, topEdgeCentre: { x: 0, y: 0 } },
    );
  },
};

/**
 * The right half of the crown.
 *
 * ```
 *    panelTop ___
 *            |   \\.  side
 *            |    \\ \\
 *            | panelSeam|
 *            |      \\  |
 *            '-.seam_\\_| rim
 * ```
 */
function crownOf(tape: Tape) {
  const [width, height] = [tape('panelWidth'), tape('panelHeight')];
  const end = { x: width / 2, y: height + width * SEAM_FALL };
  const seam: Path = [
    move(end),
    curve(
      { x: end.x * 0.72, y: height + width * SEAM_FALL * 0.36 },
      { x: end.x * 0.36, y: height },
      { x: 0, y: height },
    ),
  ];
  const parting = { x: width * 0.25, y: height * 0.062 };
  // The crown's edge goes on from the panel's top without a bend.
  const onwards = { x: width * 0.08, y: height * 0.052 };
  const panelTop: Path = [
    move({ x: 0, y: 0 }),
    curve({ x: width * 0.09, y: 0 }, { x: parting.x - onwards.x, y: parting.y - onwards.y }, parting),
  ];
  const panelSeam: Path = [
    move(parting),
    curve({ x: width * 0.385, y: height * 0.19 }, { x: end.x * 0.985, y: height * 0.56 }, end),
  ];
  const ear = { x: end.x + width * SIDE_SHOWS, y: end.y - width * 0.006 };
  const side: Path = [
    move(parting),
    curve(
      { x: parting.x + onwards.x * 2, y: parting.y + onwards.y * 2 },
      { x: ear.x + width * 0.012, y: height * 0.5 },
      ear,
    ),
  ];
  const [panelStitch] = cutAtHeight(beside(panelSeam, STITCH_MM), end.y - 2.2 * STITCH_MM);
  return { seam, panelTop, panelSeam, panelStitch, side, rim: straight(ear, end) };
}

/** The right half of the brim below its seam, from the seam's end round to the centre, and its rows of stitching. */
function brimOf(tape: Tape, seam: Path): { edge: Path; rows: Path[] } {
  const end = startOf(seam);
  const [half, depth, seamY] = [tape('brimWidth') / 2, tape('brimDepth'), tape('panelHeight')];
  const foot = seamY + depth;
  const tip = { x: half, y: end.y + (foot - end.y) * 0.58 };
  const [out, fall] = [tip.x - end.x, foot - end.y];
  const edge: Path = [
    move(end),
    curve({ x: end.x + out * 0.62, y: end.y + fall * 0.03 }, { x: tip.x, y: end.y + fall * 0.28 }, tip),
    curve({ x: tip.x, y: foot - fall * 0.1 }, { x: tip.x * 0.64, y: foot }, { x: 0, y: foot }),
  ];
  const rows = BRIM_ROWS.map((share): Path => {
    const y = seamY + depth * share;
    const from = { x: end.x + out * 0.86 * share - 4, y: end.y + fall * 0.72 * share };
    return [move(from), curve({ x: from.x * 0.74, y: y + (from.y - y) * 0.3 }, { x: from.x * 0.38, y }, { x: 0, y })];
  });
  return { edge, rows };
}

/** The covered button on the top of the crown. */
function buttonOf(tape: Tape): Path {
  const [x, y] = [tape('panelWidth') * 0.034, tape('panelWidth') * 0.018];
  return [
    move({ x: -x, y: 0.8 }),
    curve({ x: -x, y: -y }, { x: -x * 0.5, y: -y }, { x: 0, y: -y }),
    curve({ x: x * 0.5, y: -y }, { x, y: -y }, { x, y: 0.8 }),
    close,
  ];
}

/** The seam's curve a little higher, within the panel. */
function raisedBy(seam: Path, upMm: number): Path {
  const end = startOf(seam);
  return beside(seam, upMm).map((step) =>
    step.step === 'move' ? move({ x: end.x - upMm * 0.4, y: step.to.y }) : step,
  );
}
