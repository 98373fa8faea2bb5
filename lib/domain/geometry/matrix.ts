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
  return [cos, sin, -sin, cos, to.x - (cos * from.x - sin * from.y), to.y - (sin * from.x + cos * from.y)];
}
