import type { Spot } from '../art-facts';

/** A picture's area in cells of `scale` × `scale` pixels, one byte each: 1 where something of a kind lies in the cell. */
export type CellGrid = {
  readonly cells: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly area: Spot;
};

/** As many cells as are measured; a picture with more pixels is measured in cells of 2 × 2 or more of them. */
const MOST_CELLS = 7_500_000;

/** How many pixels wide the cells of an area are. */
export function cellScale({ width, height }: Spot): number {
  return Math.ceil(Math.sqrt((width * height) / MOST_CELLS));
}

/** Columns past the area's right edge at least, so that a step or two to the left of a row leads to none of it. */
const SPARE_COLUMNS = 2;

/** A grid over an area with nothing in it. Its width is whole fours, so that four cells can be looked at at once. */
export function emptyGrid(area: Spot, scale: number): CellGrid {
  const width = Math.ceil((columnsOf(area, scale) + SPARE_COLUMNS) / 4) * 4;
  const height = Math.ceil(area.height / scale);
  return { cells: new Uint8Array(width * height), width, height, scale, area };
}

/** Marks the spare columns past the area's right edge. */
export function markSpare({ cells, width, scale, area }: CellGrid): void {
  const spare = width - columnsOf(area, scale);
  for (let end = width; end <= cells.length; end += width) cells.fill(1, end - spare, end);
}

function columnsOf({ width }: Spot, scale: number): number {
  return Math.ceil(width / scale);
}

/** Marks every cell that a run of pixels touches; `end` is not part of it. */
export function markRun({ cells, width, scale, area }: CellGrid, start: number, end: number, y: number): void {
  const row = cellOf(y - area.y, scale) * width;
  const from = cellOf(start - area.x, scale);
  const to = cellOf(end - 1 - area.x, scale);
  // A short run is marked faster by hand than by a call.
  if (to - from < 8) for (let cell = row + from; cell <= row + to; cell += 1) cells[cell] = 1;
  else cells.fill(1, row + from, row + to + 1);
}

/** Whole cells of a way in pixels; of the usual sizes without a division. */
function cellOf(px: number, scale: number): number {
  if (scale < 3) return px >> (scale - 1);
  return Math.trunc(px / scale);
}
