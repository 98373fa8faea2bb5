import { type Path, reversedPath } from '../../geometry/path';
import { along, between, distance } from '../../geometry/point';
import type { Tape } from '../kind-design';
import { armholeCurve } from './armhole';
import { bent, chained, startOf, straight, swept } from './curves';
import { closed, pairOf, partPair, stacked } from './drawn';
import { laidClear } from './laid-sleeve';
import { hemmedEnd, ribbedEnd } from './sleeve-end';
import type { TopFrame } from './top-frame';
import type { Arm, OnBody, SleeveEnd } from './top-pieces';

/** Share of the opening that a short sleeve spans across the armhole; it sets how steeply the sleeve falls. */
const SHORT_SLEEVE_SPREAD = 0.92;
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
  const ended =
    end === 'hem' ? hemmedEnd(tape, top, bottom, under, fallRad) : ribbedEnd(tape, top, bottom, under, fallRad);
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

/** Creases that the cloth of the right half falls into where sleeve and body meet; for looks. */
function shortSleeveFolds({ shoulder, underarm }: TopFrame, under: Path, lengthMm: number): Path[] {
  const reach = distance(shoulder, underarm);
  const inSleeve = between(underarm, startOf(under), 0.12);
  const sleeveEnd = along(inSleeve, -0.75, Math.min(reach * 0.3, lengthMm * 0.34));
  const inBody = { x: underarm.x - 1, y: underarm.y + reach * 0.05 };
  const bodyEnd = { x: underarm.x - reach * 0.22, y: underarm.y + reach * 0.2 };
  return [bent(inSleeve, sleeveEnd, 0.1), bent(inBody, bodyEnd, 0.1)];
}
