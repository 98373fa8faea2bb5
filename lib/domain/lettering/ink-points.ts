import { cubicAt, type Path } from '../geometry/path';
import { between, type Point } from '../geometry/point';

/** Points looked at between the ends of a curve besides its extremes: a bow of a letter is then known to 0.1 mm. */
const CUTS = 6;

/**
 * Points on a drawn path that its box and its convex hull can be taken of: every end, the extremes of every curve (so that
 * the box is exact) and some between.
 */
export function inkPoints(path: Path): Point[] {
  const points: Point[] = [];
  let from: Point = { x: 0, y: 0 };
  for (const step of path) {
    if (step.step === 'close') continue;
    if (step.step === 'curve') {
      const { c1, c2, to } = step;
      const shares = [...extremes(from.x, c1.x, c2.x, to.x), ...extremes(from.y, c1.y, c2.y, to.y)];
      for (let cut = 1; cut < CUTS; cut += 1) shares.push(cut / CUTS);
      for (const share of shares) points.push(cubicAt(from, c1, c2, to, share));
    }
    points.push(step.to);
    from = step.to;
  }
  return points;
}

/** As many places along a straight side are measured once it is bent. */
const ALONG_SIDE = 16;

/** Places along the straight sides of a path, between their ends. */
export function placesAlongSides(path: Path): Point[] {
  const places: Point[] = [];
  let from: Point = { x: 0, y: 0 };
  let start = from;
  for (const step of path) {
    const to = step.step === 'close' ? start : step.to;
    if (step.step === 'line' || step.step === 'close') {
      for (let index = 1; index < ALONG_SIDE; index += 1) places.push(between(from, to, index / ALONG_SIDE));
    }
    if (step.step === 'move') start = to;
    from = to;
  }
  return places;
}

/** Where a cubic turns back along one axis: the roots of its derivative between 0 and 1. */
function extremes(p0: number, p1: number, p2: number, p3: number): number[] {
  const a = 3 * (p3 - 3 * p2 + 3 * p1 - p0);
  const b = 6 * (p2 - 2 * p1 + p0);
  const c = 3 * (p1 - p0);
  if (Math.abs(a) < 1e-12) return b === 0 ? [] : inside([-c / b]);
  const root = Math.sqrt(b * b - 4 * a * c);
  return Number.isNaN(root) ? [] : inside([(-b + root) / (2 * a), (-b - root) / (2 * a)]);
}

function inside(shares: readonly number[]): number[] {
  return shares.filter((share) => share > 0 && share < 1);
}
