import type { Point } from './point';

/** An upright box in millimetres; `x`, `y` is its top left corner. */
export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** The smallest upright box around the points. Throws on an empty list: there is no such box. */
export function boxAround(points: readonly Point[]): Box {
  if (points.length === 0) throw new Error('boxAround: no points');
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (const { x, y } of points) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  }
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** The smallest box around several boxes. Throws on an empty list. */
export function boxAroundBoxes(boxes: readonly Box[]): Box {
  return boxAround(boxes.flatMap((box) => [topLeft(box), bottomRight(box)]));
}

/** The box grown by `margin` on every side (shrunk where negative). */
export function grownBox(box: Box, margin: number): Box {
  return { x: box.x - margin, y: box.y - margin, width: box.width + 2 * margin, height: box.height + 2 * margin };
}

/** The box's upper left corner. */
export function topLeft(box: Box): Point {
  return { x: box.x, y: box.y };
}

/** The box's lower right corner. */
export function bottomRight(box: Box): Point {
  return { x: box.x + box.width, y: box.y + box.height };
}
