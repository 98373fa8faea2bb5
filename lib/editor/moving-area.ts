import { bottomRight, boxAround, grownBox, topLeft } from '@/lib/domain/geometry/box';
import { applyMatrix } from '@/lib/domain/geometry/matrix';
import { pathFromData } from '@/lib/domain/geometry/path-data';
import type { Point } from '@/lib/domain/geometry/point';
import type { ImageShape, PrintShape } from '@/lib/domain/layout/scene';
import { TAPE_WIDTH_MM, type Tape } from '@/lib/domain/layout/tape';
import { pxAt, type Viewport } from './viewport';

/** A part of the paper, whole CSS pixels from its upper left corner. */
export type AreaPx = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** Areas grow by whole steps of this, so that a drag seldom makes one of another size, CSS pixels. */
const STEP_PX = 64;
/** Room for the edges of what is drawn, CSS pixels. */
const EDGE_PX = 3;

/** The part of the paper that some points of the flat, mm, lie in, with `aroundMm` around them; never outside the paper. */
export function areaAround(
  points: readonly Point[],
  aroundMm: number,
  viewport: Viewport,
  paper: { readonly width: number; readonly height: number },
): AreaPx {
  if (points.length === 0) return { x: 0, y: 0, width: STEP_PX, height: STEP_PX };
  const box = boxAround(points.map((point) => pxAt(viewport, point)));
  const around = aroundMm * viewport.pxPerMm + EDGE_PX;
  const across = within(box.x - around, box.x + box.width + around, paper.width);
  const down = within(box.y - around, box.y + box.height + around, paper.height);
  return { x: across.from, y: down.from, width: across.length, height: down.length };
}

function within(from: number, to: number, most: number): { from: number; length: number } {
  const start = Math.min(Math.max(0, Math.floor(from)), Math.max(0, most - STEP_PX));
  const end = Math.max(start + 1, Math.min(most, Math.ceil(to)));
  return { from: start, length: Math.ceil((end - start) / STEP_PX) * STEP_PX };
}

/** Corners of the whole picture of a print, mm on the flat: pixels outside the ink may show too. */
export function pictureCorners({
  widthPx,
  heightPx,
  matrix,
}: Pick<ImageShape, 'widthPx' | 'heightPx' | 'matrix'>): Point[] {
  return [
    { x: 0, y: 0 },
    { x: widthPx, y: 0 },
    { x: widthPx, y: heightPx },
    { x: 0, y: heightPx },
  ].map((corner) => applyMatrix(matrix, corner));
}

/** Points that what a print is drawn as lies within, mm on the flat. */
export function drawnCorners(shape: PrintShape): Point[] {
  if (shape.kind === 'image') return pictureCorners(shape);
  const ends = pathFromData(shape.d).flatMap((step) => {
    if (step.step === 'close') return [];
    return step.step === 'curve' ? [step.c1, step.c2, step.to] : [step.to];
  });
  if (ends.length === 0) return [];
  const box = grownBox(boxAround(ends), shape.outline?.widthMm ?? 0);
  return [topLeft(box), bottomRight(box)];
}

/** Every end of some tapes and of their leaders, mm on the flat. */
export function tapeEnds(tapes: readonly Pick<Tape, 'from' | 'to' | 'leaders'>[]): Point[] {
  return tapes.flatMap(({ from, to, leaders }) => [from, to, ...leaders.flat()]);
}

/** How far a tape reaches beside the line between its ends, mm. */
export function tapeReachMm(tapes: readonly Pick<Tape, 'scale'>[]): number {
  return Math.max(0, ...tapes.map(({ scale }) => TAPE_WIDTH_MM * scale));
}
