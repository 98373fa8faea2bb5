import { curve, endOf, move, type Path, reversedPath } from '../../geometry/path';
import { along, distance } from '../../geometry/point';
import type { Tape } from '../kind-design';
import { chained, cutAtHeight, straight } from './curves';
import { closed, type Drawn, inSecondCloth, pairOf, partPair, stacked } from './drawn';
import { hangingSleeve } from './hanging-sleeve';
import type { TopFrame } from './top-frame';
import type { Arm, OnBody, SleeveEnd } from './top-pieces';

/** Share of the neck drop at which the seam of a raglan sleeve meets the neck seam, for looks. */
const MEETS_NECK_AT = { front: 0.34, back: 0.4 } as const;

/** A raglan sleeve of the second cloth, laid down beside the body: its seam runs from the neck to the underarm. */
export function raglanArm(
  tape: Tape,
  { side, frame, neck: { seam: neckSeam }, sideSeam }: OnBody,
  end: SleeveEnd,
): Arm {
  const { underarm } = frame;
  const drop = tape(side === 'front' ? 'frontNeckDrop' : 'backNeckDrop');
  const [neckEdge] = cutAtHeight(neckSeam, drop * MEETS_NECK_AT[side]);
  const seam = raglanSeam(neckEdge, frame);
  const sleeve = hangingSleeve(tape, frame, sideSeam, 'neck', end);
  const whole = closed(
    chained(sleeve.outline, straight(sleeve.leaves, underarm), reversedPath(seam), reversedPath(neckEdge)),
  );
  const drawn: Drawn = {
    parts: [...partPair('sleeve', whole), ...sleeve.ended.parts],
    lines: [...sleeve.ended.lines, ...sleeve.folds.flatMap((fold) => pairOf('fold', fold))],
  };
  return {
    armhole: chained(neckEdge, seam),
    outline: sleeve.outline,
    sideBelow: sleeve.sideBelow,
    shoulderSeam: false,
    behind: { parts: [], lines: [] },
    over: stacked(inSecondCloth(drawn), { parts: [], lines: pairOf('armhole', seam) }),
  };
}

/** From the neck seam down to the underarm: nearly straight, turning towards upright above the underarm. */
function raglanSeam(neckEdge: Path, { underarm }: TopFrame): Path {
  const from = endOf(neckEdge);
  const reach = distance(from, underarm);
  const straightRad = Math.atan2(underarm.y - from.y, underarm.x - from.x);
  return [
    move(from),
    curve(
      along(from, straightRad + 0.1, reach * 0.35),
      along(underarm, straightRad + Math.PI + 0.2, reach * 0.38),
      underarm,
    ),
  ];
}
