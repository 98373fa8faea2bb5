import { curve, move, type Path, reversedPath } from '../../geometry/path';
import type { Tape } from '../kind-design';
import { beside, chained } from './curves';
import { closed, pairOf, partPair } from './drawn';
import type { Arm, OnBody } from './top-pieces';

/** An armhole without a sleeve, cut well in and bound `collarRib` deep. */
export function bareArm(tape: Tape, { frame: { shoulder, underarm }, sideSeam }: OnBody): Arm {
  const height = underarm.y - shoulder.y;
  const armhole: Path = [
    move(shoulder),
    curve(
      { x: shoulder.x - height * 0.03, y: shoulder.y + height * 0.5 },
      { x: underarm.x - (underarm.x - shoulder.x) * 0.62 - height * 0.04, y: underarm.y - height * 0.06 },
      underarm,
    ),
  ];
  const binding = beside(armhole, tape('collarRib'));
  return {
    armhole,
    outline: armhole,
    sideBelow: sideSeam,
    shoulderSeam: true,
    behind: { parts: [], lines: [] },
    over: {
      parts: partPair('rib', closed(chained(armhole, reversedPath(binding)))),
      lines: [...pairOf('armhole', armhole), ...pairOf('armhole', binding)],
    },
  };
}
