/** A point in millimetres on a side of a garment: x to the viewer's right, y down. */
export type Point = { readonly x: number; readonly y: number };

/** Straight distance between two points, in their own unit. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The point a share `t` of the way from `a` to `b`. */
export function between(a: Point, b: Point, t: number): Point {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}

/** `origin` moved by `length` along the direction of `angleRad`, clockwise from the x axis since y points down. */
export function along(origin: Point, angleRad: number, length: number): Point {
  return { x: origin.x + Math.cos(angleRad) * length, y: origin.y + Math.sin(angleRad) * length };
}

/** The point mirrored across the centre line x = 0. */
export function mirrored(point: Point): Point {
  return { x: -point.x + 0, y: point.y };
}
