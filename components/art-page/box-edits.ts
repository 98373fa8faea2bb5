import type { Spot } from '@/lib/domain/art/art-facts';
import type { Point } from '@/lib/domain/geometry/point';

/** A picture's length and height in its own pixels. */
export type PictureSize = { readonly widthPx: number; readonly heightPx: number };

export const BOX_EDGES = ['left', 'top', 'right', 'bottom'] as const;
export type BoxEdge = (typeof BOX_EDGES)[number];

/** The box between two opposite corners: whole pixels, at least one, within the picture. */
export function boxBetween(a: Point, b: Point, { widthPx, heightPx }: PictureSize): Spot {
  const across = spanBetween(a.x, b.x, widthPx);
  const down = spanBetween(a.y, b.y, heightPx);
  return { x: across.from, y: down.from, width: across.length, height: down.length };
}

/** The box moved as a whole, no further than the picture's edge. */
export function movedBox(box: Spot, by: Point, { widthPx, heightPx }: PictureSize): Spot {
  return {
    ...box,
    x: within(box.x + by.x, 0, widthPx - box.width),
    y: within(box.y + by.y, 0, heightPx - box.height),
  };
}

/** Where an edge of the box is: px from the left, or from the top. */
export function edgeAt(box: Spot, edge: BoxEdge): number {
  if (edge === 'left') return box.x;
  if (edge === 'top') return box.y;
  return edge === 'right' ? box.x + box.width : box.y + box.height;
}

/** The least and the most an edge can be at without passing the edge across from it or leaving the picture. */
export function edgeRange(box: Spot, edge: BoxEdge, { widthPx, heightPx }: PictureSize): { min: number; max: number } {
  if (edge === 'left') return { min: 0, max: box.x + box.width - 1 };
  if (edge === 'top') return { min: 0, max: box.y + box.height - 1 };
  return edge === 'right' ? { min: box.x + 1, max: widthPx } : { min: box.y + 1, max: heightPx };
}

/** The box with one edge elsewhere; the others stay. */
export function withEdge(box: Spot, edge: BoxEdge, at: number, picture: PictureSize): Spot {
  const { min, max } = edgeRange(box, edge, picture);
  const to = within(at, min, max);
  if (edge === 'left') return { ...box, x: to, width: box.x + box.width - to };
  if (edge === 'top') return { ...box, y: to, height: box.y + box.height - to };
  return edge === 'right' ? { ...box, width: to - box.x } : { ...box, height: to - box.y };
}

/** A box to begin with: the middle half of the picture. */
export function middleBox({ widthPx, heightPx }: PictureSize): Spot {
  return boxBetween(
    { x: widthPx / 4, y: heightPx / 4 },
    { x: (widthPx * 3) / 4, y: (heightPx * 3) / 4 },
    { widthPx, heightPx },
  );
}

function spanBetween(a: number, b: number, most: number): { from: number; length: number } {
  const from = within(Math.min(a, b), 0, most - 1);
  return { from, length: within(Math.max(a, b), from + 1, most) - from };
}

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, Math.round(value)));
}
