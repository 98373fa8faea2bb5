import type { FrozenFlat } from '@/lib/domain/garment/flat';
import type { Box } from '@/lib/domain/geometry/box';
import { applyMatrix, type Matrix } from '@/lib/domain/geometry/matrix';
import type { Point } from '@/lib/domain/geometry/point';
import type { LayoutDocument, Print, SizeKey } from '@/lib/domain/layout/document';
import { placedPrint, printsOn } from '@/lib/domain/layout/scene';
import type { SetType } from '@/lib/domain/layout/type-case';
import type { Selection } from './selection';

/** Corners of a print's ink as the upright picture has them; turning the print turns its corners. */
export const FRAME_CORNERS = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft'] as const;
export type FrameCorner = (typeof FRAME_CORNERS)[number];

/** Where the four corners of the unturned ink's box lie, in the flat's millimetres. */
export function frameCorners(inkBox: Box, matrix: Matrix): Readonly<Record<FrameCorner, Point>> {
  const { x, y, width, height } = inkBox;
  return {
    topLeft: applyMatrix(matrix, { x, y }),
    topRight: applyMatrix(matrix, { x: x + width, y }),
    bottomRight: applyMatrix(matrix, { x: x + width, y: y + height }),
    bottomLeft: applyMatrix(matrix, { x, y: y + height }),
  };
}

/** The corner straight across the frame. */
export function oppositeCorner(corner: FrameCorner): FrameCorner {
  const opposite = FRAME_CORNERS[(FRAME_CORNERS.indexOf(corner) + 2) % 4];
  if (!opposite) throw new Error(`no corner across from ${corner}`);
  return opposite;
}

/**
 * The print that a finger or pointer at `atMm` (the flat's millimetres) takes hold of: the one lying on top whose frame is
 * within `reachMm`. Null where only cloth or paper is.
 */
export function printAt(
  layout: Pick<LayoutDocument, 'prints'>,
  selection: Pick<Selection, 'garmentId' | 'side'> & { readonly size: SizeKey },
  flat: FrozenFlat,
  atMm: Point,
  reachMm: number,
  setType?: SetType,
): Print | null {
  return (
    printsOn(layout, selection).findLast((print) => {
      const { frame, matrix } = placedPrint(print, selection.size, flat, setType);
      const corners = frameCorners(frame, matrix);
      return isWithin(
        FRAME_CORNERS.map((corner) => corners[corner]),
        atMm,
        reachMm,
      );
    }) ?? null
  );
}

/** Whether the point lies inside a convex outline (clockwise as seen) or no further than `reachMm` outside each of its edges. */
function isWithin(outline: readonly Point[], at: Point, reachMm: number): boolean {
  return outline.every((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const inside = (to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x);
    return inside >= -reachMm * Math.max(length, 1e-9);
  });
}
