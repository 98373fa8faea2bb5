import { close, curve, move, type Path, type PathStep } from '../geometry/path';
import { between, type Point } from '../geometry/point';

/** An arc that lines are bent along: its radius, and whether its middle rises (1) or sags (-1). */
export type Arch = { readonly radiusMm: number; readonly rises: 1 | -1 };

/** Letters are never bent on an arc smaller than so many times their block: lower edges would run into each other. */
const LEAST_RADIUS = 0.75;

/**
 * The arc of lettering that may take `mostAcrossMm`: over that width its middle rises `archPercent` hundredths of the
 * width over its ends. All lines of a list lie on the same arc, so that shirts side by side show the same curve. Null
 * where it is straight.
 *
 * Half the angle that a chord c with rise s spans is 2·atan(2s/c), and its radius c / (2·sin of that).
 */
export function archOf(archPercent: number, mostAcrossMm: number, blockHeightMm: number): Arch | null {
  if (archPercent === 0 || !(mostAcrossMm > 0)) return null;
  const half = 2 * Math.atan((2 * Math.abs(archPercent)) / 100);
  const radiusMm = Math.max(mostAcrossMm / (2 * Math.sin(half)), LEAST_RADIUS * blockHeightMm);
  return { radiusMm, rises: archPercent > 0 ? 1 : -1 };
}

/** Pieces are so short that none spans more of the arc than this, radians: the bent curve is then true to 0.01 mm. */
const PIECE_RAD = 0.08;

/**
 * A path bent along an arc: lengths along the line y = `neutralY` are kept, what lies over it spreads and what lies under
 * it closes up (the other way round where it sags). x is measured from the middle; the middle stays where it is.
 */
export function bent(path: Path, arch: Arch, neutralY: number): Path {
  const steps: PathStep[] = [];
  let from: Point = { x: 0, y: 0 };
  let start = from;
  const at = (point: Point) => bentPoint(point, arch, neutralY);
  const run = (pieces: readonly Cubic[]) => {
    for (const [a, b, c, d] of pieces) {
      const [p, q] = [at(a), at(d)];
      steps.push(curve(carried(p, a, b, arch, neutralY), carried(q, d, c, arch, neutralY), q));
    }
  };
  for (const step of path) {
    if (step.step === 'move') {
      steps.push(move(at(step.to)));
      start = step.to;
    } else if (step.step === 'line') run(cut(straight(from, step.to), arch));
    else if (step.step === 'curve') run(cut([from, step.c1, step.c2, step.to], arch));
    else {
      // The closing side is as long as any other and bends as they do.
      if (Math.hypot(start.x - from.x, start.y - from.y) > 1e-6) run(cut(straight(from, start), arch));
      steps.push(close);
    }
    from = step.step === 'close' ? start : step.to;
  }
  return steps;
}

/** Where a point comes to lie. */
export function bentPoint({ x, y }: Point, { radiusMm, rises }: Arch, neutralY: number): Point {
  const angle = x / radiusMm;
  const radius = radiusMm - rises * (y - neutralY);
  return { x: radius * Math.sin(angle), y: neutralY + rises * (radiusMm - radius * Math.cos(angle)) };
}

type Cubic = readonly [Point, Point, Point, Point];

function straight(from: Point, to: Point): Cubic {
  return [from, between(from, to, 1 / 3), between(from, to, 2 / 3), to];
}

function cut(cubic: Cubic, { radiusMm }: Arch): Cubic[] {
  const xs = cubic.map(({ x }) => x);
  const pieces = Math.max(1, Math.ceil((Math.max(...xs) - Math.min(...xs)) / (radiusMm * PIECE_RAD)));
  const parts: Cubic[] = [];
  let rest = cubic;
  for (let left = pieces; left > 1; left -= 1) {
    const [first, second] = split(rest, 1 / left);
    parts.push(first);
    rest = second;
  }
  return [...parts, rest];
}

/** A cubic cut in two at share `t` (de Casteljau). */
function split([a, b, c, d]: Cubic, t: number): [Cubic, Cubic] {
  const [ab, bc, cd] = [between(a, b, t), between(b, c, t), between(c, d, t)];
  const [abc, bcd] = [between(ab, bc, t), between(bc, cd, t)];
  const middle = between(abc, bcd, t);
  return [
    [a, ab, abc, middle],
    [middle, bcd, cd, d],
  ];
}

/** A handle carried along with its end: turned and stretched as the arc turns and stretches what lies there. */
function carried(placed: Point, end: Point, handle: Point, { radiusMm, rises }: Arch, neutralY: number): Point {
  const angle = end.x / radiusMm;
  const stretch = (radiusMm - rises * (end.y - neutralY)) / radiusMm;
  const [dx, dy] = [(handle.x - end.x) * stretch, handle.y - end.y];
  return {
    x: placed.x + dx * Math.cos(angle) - rises * dy * Math.sin(angle),
    y: placed.y + rises * dx * Math.sin(angle) + dy * Math.cos(angle),
  };
}
