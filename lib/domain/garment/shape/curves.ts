import { cubicAt, curve, endOf, flattened, joined, line, move, type Path, type PathStep } from '../../geometry/path';
import { along, between, distance, type Point } from '../../geometry/point';

type Cubic = readonly [Point, Point, Point, Point];

/** How far along a circle's quarter the control points of its cubic lie (the usual approximation, within 0.03 %). */
const QUARTER = 0.5523;

/** Where a run begins. */
export function startOf(path: Path): Point {
  const first = path[0];
  if (first?.step !== 'move') throw new Error(`startOf: begins with ${first?.step ?? 'nothing'}`);
  return first.to;
}

/** One curve from a point to another that leaves and arrives along the given directions, each pull a share of the distance. */
export function swept(
  from: Point,
  leaveRad: number,
  leavePull: number,
  to: Point,
  arriveRad: number,
  arrivePull: number,
): Path {
  const reach = distance(from, to);
  return [
    move(from),
    curve(along(from, leaveRad, reach * leavePull), along(to, arriveRad + Math.PI, reach * arrivePull), to),
  ];
}

/** A curve between two points that leaves the straight line by a share of its length, to the right where positive. */
export function bent(from: Point, to: Point, share: number): Path {
  const aside = { x: -(to.y - from.y) * share, y: (to.x - from.x) * share };
  const at = (t: number) => {
    const on = between(from, to, t);
    return { x: on.x + aside.x, y: on.y + aside.y };
  };
  return [move(from), curve(at(0.33), at(0.67), to)];
}

/** The straight line between two points. */
export function straight(...points: readonly [Point, Point, ...Point[]]): Path {
  const [first, ...rest] = points;
  return [move(first), ...rest.map(line)];
}

/** Several runs one after the other. */
export function chained(first: Path, ...rest: readonly Path[]): Path {
  return rest.reduce(joined, first);
}

/** A closed circle. */
export function circle(centre: Point, radius: number): Path {
  const pull = radius * QUARTER;
  const at = (x: number, y: number): Point => ({ x: centre.x + x, y: centre.y + y });
  return [
    move(at(0, -radius)),
    curve(at(pull, -radius), at(radius, -pull), at(radius, 0)),
    curve(at(radius, pull), at(pull, radius), at(0, radius)),
    curve(at(-pull, radius), at(-radius, pull), at(-radius, 0)),
    curve(at(-radius, -pull), at(-pull, -radius), at(0, -radius)),
    { step: 'close' },
  ];
}

/** A run that only goes down, cut level with `y`: what is above, and what is below. Throws where it does not reach `y`. */
export function cutAtHeight(path: Path, y: number): readonly [Path, Path] {
  let from = startOf(path);
  for (const [index, step] of path.entries()) {
    if (index === 0 || step.step === 'close') continue;
    if (step.to.y >= y) {
      const [upper, lower] = cutStep(from, step, y);
      return [
        [...path.slice(0, index), upper],
        [move(endOfStep(upper)), lower, ...path.slice(index + 1)],
      ];
    }
    from = endOfStep(step);
  }
  throw new Error(`cutAtHeight: ${y} is below ${endOf(path).y}`);
}

function cutStep(from: Point, step: PathStep, y: number): [PathStep, PathStep] {
  if (step.step === 'line') {
    const at = between(from, step.to, (y - from.y) / (step.to.y - from.y || 1));
    return [line(at), line(step.to)];
  }
  if (step.step !== 'curve') throw new Error(`cutAtHeight: a ${step.step}`);
  const cubic: Cubic = [from, step.c1, step.c2, step.to];
  return splitCubic(cubic, shareAtHeight(cubic, y));
}

/** The share of a falling curve at which it is level with `y`, by halving. */
function shareAtHeight(cubic: Cubic, y: number): number {
  let [low, high] = [0, 1];
  for (let round = 0; round < 48; round += 1) {
    const middle = (low + high) / 2;
    if (cubicAt(...cubic, middle).y < y) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** A curve in two at share `t` (de Casteljau). */
function splitCubic([p0, p1, p2, p3]: Cubic, t: number): [PathStep, PathStep] {
  const [a, b, c] = [between(p0, p1, t), between(p1, p2, t), between(p2, p3, t)];
  const [d, e] = [between(a, b, t), between(b, c, t)];
  const middle = between(d, e, t);
  return [curve(a, d, middle), curve(e, c, p3)];
}

function endOfStep(step: PathStep): Point {
  if (step.step === 'close') throw new Error('endOfStep: a close has no end of its own');
  return step.to;
}

/** Points at equal steps of length along a run, both ends among them. */
export function pointsAlong(path: Path, count: number): Point[] {
  const points = flattened(path, 24)[0] ?? [];
  const reached = lengthsReached(points);
  const total = reached.at(-1) ?? 0;
  let next = 1;
  return Array.from({ length: count }, (_, index) => {
    const length = (total * index) / Math.max(1, count - 1);
    while (next < points.length - 1 && (reached[next] ?? 0) < length) next += 1;
    const [a, b, from, to] = [points[next - 1], points[next], reached[next - 1], reached[next]];
    if (!a || !b || from === undefined || to === undefined) throw new Error(`pointsAlong: ${points.length} points`);
    return to === from ? a : between(a, b, (length - from) / (to - from));
  });
}

function lengthsReached(points: readonly Point[]): number[] {
  let sum = 0;
  return points.map((point, index) => {
    sum += index === 0 ? 0 : distance(points[index - 1] ?? point, point);
    return sum;
  });
}

/**
 * A run beside another, `mm` to the right of its direction (to the left where negative): each piece's control polygon is
 * moved aside, which is near enough for stitching. Pieces must meet smoothly.
 */
export function beside(path: Path, mm: number): Path {
  let from = startOf(path);
  const steps: PathStep[] = [];
  for (const step of path.slice(1)) {
    if (step.step !== 'line' && step.step !== 'curve') throw new Error(`beside: a ${step.step}`);
    const corners = step.step === 'line' ? [from, step.to] : [from, step.c1, step.c2, step.to];
    const [start, ...rest] = movedAside(corners, mm);
    if (steps.length === 0 && start) steps.push(move(start));
    const [a, b, c] = rest;
    if (a && b && c) steps.push(curve(a, b, c));
    else if (a) steps.push(line(a));
    from = step.to;
  }
  return steps;
}

function movedAside(corners: readonly Point[], mm: number): Point[] {
  return corners.map((corner, index) => {
    const before = corners[Math.max(0, index - 1)] ?? corner;
    const after = corners[Math.min(corners.length - 1, index + 1)] ?? corner;
    const angleRad = Math.atan2(after.y - before.y, after.x - before.x);
    return along(corner, angleRad + Math.PI / 2, mm);
  });
}
