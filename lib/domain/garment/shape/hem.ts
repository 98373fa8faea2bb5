import { cubicAt, curve, endOf, line, move, type Path, reversedPath } from '../../geometry/path';
import { between, type Point } from '../../geometry/point';
import type { Tape } from '../kind-design';
import { chained, straight, swept } from './curves';
import { band, lineOf, pairOf, partOf, whole } from './drawn';
import { ribKnit } from './rib';
import type { TopFrame } from './top-frame';
import type { Hem } from './top-pieces';

/** Distances of the two rows of stitching from the edge of hem and sleeve, mm: 3/4 in and 1/2 in (common practice, no source). */
const STITCH_ROWS_MM = [19, 13] as const;
/** A sleeve shorter than this is turned up less, mm; for looks. */
const FULL_HEM_FROM_MM = 150;

/** Distances of the rows of stitching from the end of a sleeve of this length, mm. */
export function sleeveStitchRows(lengthMm: number): number[] {
  return STITCH_ROWS_MM.map((mm) => mm * Math.min(1, lengthMm / FULL_HEM_FROM_MM));
}

/** A hem turned up and stitched in two rows. */
export function stitchedHem(_tape: Tape, frame: TopFrame): Hem {
  const edge = hemCurve(frame);
  return {
    corner: frame.hem,
    bodyEdge: edge,
    outline: edge,
    drawn: {
      parts: [],
      lines: [
        lineOf('hem', whole(edge)),
        ...STITCH_ROWS_MM.map((up) => lineOf('hemStitch', whole(raised(edge, up, 1 - (up / 400) * leanOf(frame))))),
      ],
    },
    centre: { x: 0, y: endOf(edge).y },
    riseAt: (xMm) => riseOf(edge, xMm),
  };
}

/** How far the body spills over a rib that draws it in, mm; for looks. */
const BLOUSE_MM = 9;

/** A knitted band at the waist that draws the body in. `hemWidth` is taken at its lower edge. */
export function ribbedHem(tape: Tape, frame: TopFrame): Hem {
  const depth = tape('hemRib');
  const lower = hemCurve(frame);
  const upper = raised(lower, depth, 1.015);
  const seamEnd = { x: frame.hem.x * 1.015, y: frame.hem.y - depth };
  const spill = Math.min(BLOUSE_MM, Math.max(2, (frame.chest.x - frame.hem.x) * 0.45));
  const corner = { x: seamEnd.x + spill, y: seamEnd.y - spill * 0.9 };
  const spillEdge = swept(corner, Math.PI / 2, 0.5, seamEnd, Math.PI, 0.4);
  const side = straight(seamEnd, frame.hem);
  return {
    corner,
    bodyEdge: chained(spillEdge, upper),
    outline: chained(spillEdge, side, lower),
    drawn: {
      parts: [partOf('rib', band(upper, lower))],
      lines: [
        ...pairOf('ribKnit', ribKnit(reversedPath(upper), reversedPath(lower), 8)),
        ...pairOf('sideSeam', side),
        lineOf('ribSeam', whole(upper)),
        lineOf('hem', whole(lower)),
      ],
    },
    centre: { x: 0, y: endOf(lower).y },
    riseAt: (xMm) => riseOf(upper, xMm),
  };
}

/**
 * Right half of the hem. The whole hem is one symmetrical curve whose height at the neck point is exactly the body
 * length: y(t) = y0 + 3t(1 - t)q with x linear in t, so q follows from the t of the neck point.
 */
function hemCurve({ hem, neck, hemRiseMm, bodyLengthMm }: TopFrame): Path {
  const neckShare = (1 - neck.x / hem.x) / 2;
  const q = hemRiseMm / (3 * neckShare * (1 - neckShare));
  const y0 = bodyLengthMm - hemRiseMm;
  const middle = y0 + 0.75 * q;
  return [move(hem), curve({ x: (hem.x * 2) / 3, y: y0 + q / 2 }, { x: hem.x / 3, y: middle }, { x: 0, y: middle })];
}

/** How much wider the body gets towards the hem, for stitching that follows the side seams. */
function leanOf({ chest, hem }: TopFrame): number {
  return ((hem.x - chest.x) / Math.max(1, hem.y - chest.y)) * (400 / hem.x);
}

/** A hem curve moved up, its width scaled about the centre line. */
function raised(edge: Path, upMm: number, scale: number): Path {
  const moved = ({ x, y }: Point): Point => ({ x: x * scale, y: y - upMm });
  return edge.map((step) => {
    if (step.step === 'close') return step;
    if (step.step === 'curve') return curve(moved(step.c1), moved(step.c2), moved(step.to));
    return { ...step, to: moved(step.to) };
  });
}

/** The hem's curve has x linear in its share, so its height above the middle at x is found in one step. */
function riseOf(edge: Path, xMm: number): number {
  const [start, step] = edge;
  if (start?.step !== 'move' || step?.step !== 'curve') throw new Error('a hem is one curve');
  const share = Math.max(0, 1 - xMm / start.to.x);
  return step.to.y - cubicAt(start.to, step.c1, step.c2, step.to, share).y;
}

/** The side seam of a body from the underarm over the chest to the hem's corner, a little in at the waist. */
export function sideSeam({ underarm, chest }: TopFrame, corner: Point): Path {
  const waist = Math.min(3, chest.x * 0.012);
  const [a, b] = [between(chest, corner, 1 / 3), between(chest, corner, 2 / 3)];
  return [
    move(underarm),
    line(chest),
    curve({ x: chest.x + (a.x - chest.x) * 0.3 - waist, y: a.y }, { x: (b.x + corner.x) / 2 - waist, y: b.y }, corner),
  ];
}

/** A side seam drawn in at the waist: narrowest, and upright there, at 40 % of the way from chest to hem. */
export function waistedSideSeam(tape: Tape, { underarm, chest }: TopFrame, { corner }: Hem): Path {
  const waist = { x: tape('waistWidth') / 2, y: chest.y + (corner.y - chest.y) * 0.4 };
  const [above, below] = [waist.y - chest.y, corner.y - waist.y];
  return [
    move(underarm),
    line(chest),
    curve({ x: chest.x, y: chest.y + above * 0.3 }, { x: waist.x, y: waist.y - above * 0.52 }, waist),
    curve(
      { x: waist.x, y: waist.y + below * 0.44 },
      { x: corner.x - (corner.x - waist.x) * 0.15, y: corner.y - below * 0.3 },
      corner,
    ),
  ];
}
