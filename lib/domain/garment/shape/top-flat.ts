import { endOf, type Path, pathBox, reversedPath } from '../../geometry/path';
import type { Flat, Side } from '../flat';
import type { KindDesign, Tape } from '../kind-design';
import { chained, startOf, straight } from './curves';
import { type Drawn, mirroredWhole, NOTHING_DRAWN, pairOf, partOf, stacked } from './drawn';
import { sideSeam } from './hem';
import { setInFrame, type TopFrame } from './top-frame';
import type { Arm, BodySide, Hem, Neck, OnBody } from './top-pieces';

/** The pieces a top is put together from. */
export type TopDesign = {
  /** Where its corners lie; set-in sleeves unless said otherwise. */
  readonly frame?: (tape: Tape) => TopFrame;
  readonly neck: (tape: Tape, frame: TopFrame, side: BodySide) => Neck;
  readonly hem: (tape: Tape, frame: TopFrame) => Hem;
  readonly sideSeam?: (tape: Tape, frame: TopFrame, hem: Hem) => Path;
  readonly arm: (tape: Tape, body: OnBody) => Arm;
  /** What is sewn on the body: pocket, zip, placket. */
  readonly over?: (tape: Tape, body: OnBody) => Drawn;
  /** The sleeve on its own, for kinds whose sleeves can be decorated. */
  readonly sleeve?: (tape: Tape, side: Side) => Flat;
};

/** How a kind put together from these pieces is drawn, side by side. */
export function topOf(design: TopDesign): KindDesign['draw'] {
  return (tape, side) => {
    if (side === 'front' || side === 'back') return bodyFlat(design, tape, side);
    if (!design.sleeve) throw new Error(`this top has no ${side}`);
    return design.sleeve(tape, side);
  };
}

/** What is behind first, then the body, then what lies on it. */
function bodyFlat(design: TopDesign, tape: Tape, side: BodySide): Flat {
  const frame = (design.frame ?? setInFrame)(tape);
  const neck = design.neck(tape, frame, side);
  const hem = design.hem(tape, frame);
  const seam = design.sideSeam?.(tape, frame, hem) ?? sideSeam(frame, hem.corner);
  const on: OnBody = { side, frame, hem, neck, sideSeam: seam };
  const arm = design.arm(tape, on);
  const shoulder = straight(frame.neck, startOf(arm.armhole));
  const body = mirroredWhole(chained(reversedPath(neck.seam), shoulder, arm.armhole, seam, hem.bodyEdge));
  const seen = straight(endOf(neck.top), startOf(arm.outline));
  const drawn = stacked(
    neck.behind,
    arm.behind,
    { parts: [partOf('body', body)], lines: arm.shoulderSeam ? pairOf('shoulderSeam', seen) : [] },
    hem.drawn,
    arm.over,
    { parts: [], lines: pairOf('sideSeam', seam) },
    design.over?.(tape, on) ?? NOTHING_DRAWN,
    neck.over,
  );
  const outline = mirroredWhole(chained(neck.top, seen, arm.outline, arm.sideBelow, hem.outline));
  return {
    side,
    ...drawn,
    outline,
    points: {
      ...neck.points,
      // A raglan's shoulder has no end.
      ...(!design.frame && { shoulderPoint: frame.shoulder }),
      underarm: frame.underarm,
      hemCentre: hem.centre,
    },
    box: pathBox(outline),
  };
}
