import type { Point } from './point';

/**
 * An affine map in the order SVG, canvas and PDF share: x' = a·x + c·y + e, y' = b·x + d·y + f.
 */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** Where the map sends the point. */
export function applyMatrix([a, b, c, d, e, f]: Matrix, { x, y }: Point): Point {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

/** The map that first scales by `scale`, then turns by `angleRad` (clockwise as seen), both about the origin, then moves `from` to `to`. */
export function scaleTurnAndMove(scale: number, angleRad: number, from: Point, to: Point): Matrix {
  const cos = Math.cos(angleRad) * scale;
  const sin = Math.sin(angleRad) * scale;
  return [cos, sin, 0 - sin, cos, to.x - (cos * from.x - sin * from.y), to.y - (sin * from.x + cos * from.y)];
}

/** The map that does `first`, then `second`. */
export function composed(second: Matrix, first: Matrix): Matrix {
  const [a, b, c, d, e, f] = second;
  return [
    a * first[0] + c * first[1],
    b * first[0] + d * first[1],
    a * first[2] + c * first[3],
    b * first[2] + d * first[3],
    a * first[4] + c * first[5] + e,
    b * first[4] + d * first[5] + f,
  ];
}

/** The map back. Throws for a map that flattens everything onto a line. */
export function inverted(matrix: Matrix): Matrix {
  const [a, b, c, d, e, f] = matrix;
  const det = a * d - b * c;
  if (det === 0 || !Number.isFinite(det)) throw new Error(`inverted: ${matrix.join(' ')} has no way back`);
  return [d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det];
}

/** The map that scales by `scale` about the origin and then moves by (x, y). */
export function scaledAndMoved(scale: number, x: number, y: number): Matrix {
  return [scale, 0, 0, scale, x, y];
}

/** How long a unit step along the source's x axis and along its y axis becomes. */
export function stretchOf([a, b, c, d]: Matrix): { readonly x: number; readonly y: number } {
  return { x: Math.hypot(a, b), y: Math.hypot(c, d) };
}

/** A map as a turn, a scale along each of the source's axes, and a move; in that order from last to first. */
export type MatrixParts = {
  readonly x: number;
  readonly y: number;
  readonly turnRad: number;
  readonly scaleX: number;
  readonly scaleY: number;
};

/** Slant, as a share of the scale, below which two axes count as square to one another: rounding alone. */
const SQUARE_WITHIN = 1e-9;

/**
 * The parts of a map that keeps right angles, for drawing surfaces that are told parts and not a matrix. Throws for one
 * that slants: its parts would draw something else.
 */
export function matrixParts(matrix: Matrix): MatrixParts {
  const [a, b, c, d, e, f] = matrix;
  const scaleX = Math.hypot(a, b);
  const scaleY = (a * d - b * c) / scaleX;
  const slant = (a * c + b * d) / (scaleX * scaleX);
  if (!(scaleX > 0) || Math.abs(slant) > SQUARE_WITHIN) throw new Error(`matrixParts: ${matrix.join(' ')} slants`);
  return { x: e, y: f, turnRad: Math.atan2(b, a), scaleX, scaleY };
}
