import type { Spot } from '../art-facts';
import { type CellGrid, cellScale, emptyGrid, markRun, markSpare } from './cell-grid';
import { type JoinedArea, joinRuns } from './joined-runs';
import {
  BACKING,
  type BackingRule,
  CLEAR,
  FIRM,
  type PixelWords,
  type RunSink,
  SOLID,
  walkRuns,
} from './pixel-classes';

/** What one walk over all pixels of an area finds. */
export type AreaScan = {
  readonly area: Spot;
  readonly backing: BackingRule | null;
  /** Pixels that print. */
  readonly inkPx: number;
  /** Pixels of the backing's colour that join the area's edges. */
  readonly joinedPx: number;
  /** Places of the backing's colour that the edges do not reach, the largest first. */
  readonly enclosed: readonly JoinedArea[];
  /** What is measured later on; null where it was not asked for. */
  readonly ink: InkCells | null;
};

/** Where ink lies in an area. */
export type InkCells = {
  /** Joined drawn pixels that are no wider or taller than a speck. */
  readonly small: readonly JoinedArea[];
  /** Cells with firm ink in them, and with room between. */
  readonly firm: CellGrid;
  readonly open: CellGrid;
  /** Cells without solid ink, and cells with half-clear ink; asked for where haze is looked for. */
  readonly haze: { readonly notSolid: CellGrid; readonly halfClear: CellGrid } | null;
};

export type ScanOptions = {
  readonly backing: BackingRule | null;
  /** Widest and tallest that joined pixels are kept as small ones. */
  readonly smallPx: number;
  /** Least pixels of an enclosed place that is kept. */
  readonly enclosedPx: number;
  /** Whether ink is marked on cells, and half-clear ink too. */
  readonly forCells: boolean;
  readonly forHaze: boolean;
  /** Looks at every so many rows and columns only: 2 for what is not measured to a pixel. */
  readonly every: number;
};

/** Noise has no end of small areas; more than so many say no more. */
const MOST_SMALL = 20_000;
const MOST_ENCLOSED = 400;

/** Walks all pixels of an area once: counts them, joins those of the backing, and marks ink for what is measured later. */
export function scanArea(pixels: PixelWords, area: Spot, options: ScanOptions): AreaScan {
  const { backing, enclosedPx, forCells, every } = options;
  const endX = area.x + area.width;
  const endY = area.y + area.height;
  let [inkPx, joinedPx] = [0, 0];
  const enclosed: JoinedArea[] = [];
  const ground = joinRuns(area.width, {
    byCorners: false,
    whenWhole: (left, top, right, bottom, areaPx) => {
      if (left === area.x || top === area.y || right === endX || bottom > endY - every) joinedPx += areaPx * every;
      else if (areaPx * every >= enclosedPx) {
        enclosed.push({ x: left, y: top, width: right - left, height: bottom - top, areaPx: areaPx * every });
        if (enclosed.length >= 2 * MOST_ENCLOSED) keepLargest(enclosed, MOST_ENCLOSED);
      }
    },
  });
  const cells = forCells ? inkCells(area, options) : null;
  walkRuns(pixels, area, backing, every, {
    run: (kind, start, end, y) => {
      if (kind !== CLEAR) inkPx += (end - start) * every;
      if (kind === BACKING) ground.run(start, end, y);
      cells?.run(kind, start, end, y);
    },
    endRow: (y) => {
      if (backing) ground.endRow(y);
      cells?.endRow(y);
    },
  });
  ground.end();
  keepLargest(enclosed, MOST_ENCLOSED);
  return { area, backing, inkPx, joinedPx, enclosed, ink: cells?.marked() ?? null };
}

/** Marks the ink of an area on grids of cells, and joins it, run by run. */
function inkCells(area: Spot, { smallPx, forHaze }: ScanOptions): RunSink & { readonly marked: () => InkCells } {
  const scale = cellScale(area);
  const [firm, open] = [emptyGrid(area, scale), emptyGrid(area, scale)];
  // Beyond the area's edge there is room.
  markSpare(open);
  const haze = forHaze ? { notSolid: emptyGrid(area, scale), halfClear: emptyGrid(area, scale) } : null;
  const small: JoinedArea[] = [];
  const joined = joinRuns(area.width, {
    byCorners: true,
    whenWhole: (left, top, right, bottom, areaPx) => {
      if (right - left > smallPx || bottom - top > smallPx || small.length >= MOST_SMALL) return;
      small.push({ x: left, y: top, width: right - left, height: bottom - top, areaPx });
    },
  });

  // Drawn pixels change from faint to firm at every edge, and are one run all the same.
  let drawnFrom = -1;
  let drawnTo = -1;
  return {
    run: (kind, start, end, y) => {
      markRun(kind >= FIRM ? firm : open, start, end, y);
      if (kind === CLEAR || kind === BACKING) return;
      if (haze) markRun(kind === SOLID ? haze.notSolid : haze.halfClear, start, end, y);
      if (drawnTo !== start) {
        if (drawnFrom >= 0) joined.run(drawnFrom, drawnTo, y);
        drawnFrom = start;
      }
      drawnTo = end;
    },
    endRow: (y) => {
      if (drawnFrom >= 0) joined.run(drawnFrom, drawnTo, y);
      drawnFrom = -1;
      drawnTo = -1;
      joined.endRow(y);
    },
    marked: () => {
      joined.end();
      // Solid ink was marked until here.
      if (haze) turnOver(haze.notSolid, haze.halfClear);
      return { small, firm, open, haze };
    },
  };
}

/** Turns a grid into that of all other cells, and takes cells with something solid out of the half-clear ones. */
function turnOver({ cells }: CellGrid, halfClear: CellGrid): void {
  for (let cell = 0; cell < cells.length; cell += 1) {
    const others = 1 - (cells[cell] as number);
    cells[cell] = others;
    if (others === 0) halfClear.cells[cell] = 0;
  }
}

function keepLargest(areas: JoinedArea[], most: number): void {
  areas.sort((a, b) => b.areaPx - a.areaPx);
  areas.length = Math.min(areas.length, most);
}
