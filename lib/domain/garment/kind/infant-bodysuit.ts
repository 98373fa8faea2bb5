import { curve, endOf, move, type Path } from '../../geometry/path';
import type { KindDesign, Tape } from '../kind-design';
import { armholeCurve } from '../shape/armhole';
import { beside, chained, circle, cutAtHeight, straight, swept } from '../shape/curves';
import { type Drawn, lineOf, NOTHING_DRAWN, pairOf, partOf, partPair, whole } from '../shape/drawn';
import { ribbedNeck } from '../shape/neckline';
import { shortSleeve } from '../shape/short-sleeve';
import { setInSleeveSide } from '../shape/sleeve-side';
import { topOf } from '../shape/top-flat';
import { setInFrame, type TopFrame } from '../shape/top-frame';
import type { Hem, OnBody } from '../shape/top-pieces';
import { NECK_RIB_CHECKS, SET_IN_CHECKS, SLEEVE_CHECKS } from './top-checks';
import { ofChest, shoulders, TOP_REQUIRED, TOP_SIDES } from './top-estimates';

/** Depth of the binding at legs and laps, mm: 3/8 in (common practice, no source). */
const BINDING_MM = 9;

/**
 * A bodysuit with lapped shoulders, short sleeves and snaps between the legs (proportions: common practice, no source).
 * Body length runs to the edge with the snaps; hem width is taken where the side seams end, leg opening from there
 * straight to the corner of that edge.
 */
export const infantBodysuit: KindDesign = {
  sides: TOP_SIDES,
  required: TOP_REQUIRED,
  estimates: {
    acrossShoulder: shoulders(0.86, 0.5),
    neckWidth: ofChest(52, 0.22),
    frontNeckDrop: ofChest(18, 0.15),
    backNeckDrop: ofChest(7, 0.03),
    collarRib: ofChest(6, 0.02),
    armhole: ofChest(38, 0.31),
    sleeveOpening: ofChest(28, 0.26),
    hemWidth: ofChest(0, 1.02),
    crotchWidth: ofChest(48, 0.16),
    legOpening: ofChest(34, 0.36),
  },
  checks: [
    ...SET_IN_CHECKS,
    ...SLEEVE_CHECKS,
    ...NECK_RIB_CHECKS,
    (tape) =>
      tape('crotchWidth') > tape('hemWidth') * 0.8 ? { reason: 'partTooLarge', measure: 'crotchWidth' } : null,
    (tape) => {
      const across = (tape('hemWidth') - tape('crotchWidth')) / 2;
      const room = tape('bodyLength') - setInFrame(tape).chest.y - 20;
      return tape('legOpening') <= across * 1.05 || tape('legOpening') > Math.hypot(across, room)
        ? { reason: 'partTooLarge', measure: 'legOpening' }
        : null;
    },
  ],
  draw: topOf({
    neck: ribbedNeck,
    arm: (tape, body) => ({ ...shortSleeve(tape, body), shoulderSeam: false }),
    hem: legHem,
    over: laps,
    sleeve: setInSleeveSide,
  }),
};

/** The two leg openings and the edge with the snaps between them. */
function legHem(tape: Tape, frame: TopFrame): Hem {
  const length = tape('bodyLength');
  const foot = { x: tape('crotchWidth') / 2, y: length };
  const across = tape('hemWidth') / 2 - foot.x;
  const corner = { x: tape('hemWidth') / 2, y: length - Math.sqrt(tape('legOpening') ** 2 - across ** 2) };
  const height = length - corner.y;
  const leg: Path = [
    move(corner),
    curve(
      { x: corner.x - across * 0.62, y: corner.y + height * 0.16 },
      { x: foot.x + across * 0.1, y: corner.y + height * 0.55 },
      foot,
    ),
  ];
  const edge = straight(foot, { x: 0, y: length });
  const snaps = [0, foot.x * 0.62].map((x) => ({ x, y: length - 8 }));
  const [middle, outer] = snaps;
  if (!middle || !outer) throw new Error(`no snaps on ${frame.bodyLengthMm} mm`);
  return {
    corner,
    bodyEdge: chained(leg, edge),
    outline: chained(leg, edge),
    drawn: {
      parts: [partOf('metal', circle(middle, 4)), ...partPair('metal', circle(outer, 4))],
      lines: [
        ...pairOf('legEdge', leg),
        ...pairOf('legEdge', beside(leg, BINDING_MM)),
        lineOf('hem', whole(edge)),
        lineOf('snap', straight({ x: foot.x + 1, y: length - 17 }, { x: -foot.x - 1, y: length - 17 })),
        lineOf('snap', circle(middle, 4)),
        ...pairOf('snap', circle(outer, 4)),
      ],
    },
    centre: { x: 0, y: length },
    riseAt: () => 0,
  };
}

/** The back's shoulders lap over the front: their bound edges run from the neck to the armhole. */
function laps(tape: Tape, { side, frame, neck }: OnBody): Drawn {
  if (side === 'back') return NOTHING_DRAWN;
  const drop = tape('frontNeckDrop');
  const height = frame.underarm.y - frame.shoulder.y;
  const edgeFrom = (neckY: number, armholeY: number): Path => {
    const [toNeck] = cutAtHeight(neck.seam, neckY);
    const [toArmhole] = cutAtHeight(armholeCurve(frame), armholeY);
    return swept(endOf(toNeck), 0.3, 0.3, endOf(toArmhole), 0.9, 0.35);
  };
  const armholeY = frame.shoulder.y + height * 0.52;
  const binding = Math.min(BINDING_MM, height * 0.16);
  return {
    parts: [],
    lines: [
      ...pairOf('lapEdge', edgeFrom(drop * 0.42, armholeY)),
      ...pairOf('stitch', edgeFrom(drop * 0.24, armholeY - binding)),
    ],
  };
}
