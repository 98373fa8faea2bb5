import type { Box } from '@/lib/domain/geometry/box';
import type { Point } from '@/lib/domain/geometry/point';

/**
 * How the paper is seen: a point of the flat at (x, y) mm shows at (x · pxPerMm + xPx, y · pxPerMm + yPx), in CSS pixels
 * from the paper's upper left corner, y down. The scale is the same both ways: true scale is never stretched.
 */
export type Viewport = { readonly pxPerMm: number; readonly xPx: number; readonly yPx: number };

/** The part of a window, in CSS pixels, that something covers on each side. */
export type InsetPx = { readonly top: number; readonly right: number; readonly bottom: number; readonly left: number };

/** The furthest and the closest a garment is looked at (common practice, no source). */
const LEAST_PX_PER_MM = 0.1;
const MOST_PX_PER_MM = 12;

/** The whole box in the free middle of a window, as large as it goes. Millimetres in, CSS pixels out. */
export function fittedViewport(box: Box, windowPx: { width: number; height: number }, insetPx: InsetPx): Viewport {
  const freeWidth = Math.max(1, windowPx.width - insetPx.left - insetPx.right);
  const freeHeight = Math.max(1, windowPx.height - insetPx.top - insetPx.bottom);
  const pxPerMm = clampedScale(Math.min(freeWidth / box.width, freeHeight / box.height));
  return {
    pxPerMm,
    xPx: insetPx.left + freeWidth / 2 - (box.x + box.width / 2) * pxPerMm,
    yPx: insetPx.top + freeHeight / 2 - (box.y + box.height / 2) * pxPerMm,
  };
}

/** Closer (factor over 1) or further, the point under `atPx` staying where it is. */
export function zoomedViewport(viewport: Viewport, factor: number, atPx: Point): Viewport {
  const pxPerMm = clampedScale(viewport.pxPerMm * factor);
  const at = mmAt(viewport, atPx);
  return { pxPerMm, xPx: atPx.x - at.x * pxPerMm, yPx: atPx.y - at.y * pxPerMm };
}

/** The paper pushed by so many CSS pixels. */
export function pannedViewport(viewport: Viewport, byPx: Point): Viewport {
  return { ...viewport, xPx: viewport.xPx + byPx.x, yPx: viewport.yPx + byPx.y };
}

/** The point of the flat, mm, that shows at a point of the paper, CSS pixels. */
export function mmAt({ pxPerMm, xPx, yPx }: Viewport, { x, y }: Point): Point {
  return { x: (x - xPx) / pxPerMm, y: (y - yPx) / pxPerMm };
}

/** Where a point of the flat, mm, shows on the paper, CSS pixels. */
export function pxAt({ pxPerMm, xPx, yPx }: Viewport, { x, y }: Point): Point {
  return { x: x * pxPerMm + xPx, y: y * pxPerMm + yPx };
}

function clampedScale(pxPerMm: number): number {
  return Math.min(MOST_PX_PER_MM, Math.max(LEAST_PX_PER_MM, pxPerMm));
}
