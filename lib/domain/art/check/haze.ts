import { type ArtFacts, MOST_SPOTS, type Spot } from '../art-facts';
import type { CellGrid } from './cell-grid';
import { type DistanceRoom, FURTHEST_CELLS, squaredDistances } from './edge-distance';

/** How far half-clear pixels of a smooth edge reach from solid ink. In pixels (common practice, no source). */
export const EDGE_REACH_PX = 2;
/** However coarse a picture is, its edges reach no further. */
const MOST_EDGE_REACH_PX = 6;

/** Haze is marked part by part; so many parts make up the long side. */
const PARTS = 24;
/** A part with fewer hazy cells than this is not marked. */
const LEAST_CELLS = 6;

/**
 * Half-clear ink further from solid ink than a smooth edge reaches. `detailShare` says how coarse the picture is: the edges
 * of an enlarged one reach further, and are blurred and not hazy.
 */
export function hazeOf(
  { notSolid, halfClear }: { readonly notSolid: CellGrid; readonly halfClear: CellGrid },
  detailShare: number,
  inkPx: number,
  room: DistanceRoom,
): ArtFacts['haze'] {
  const { width, height, scale, area } = notSolid;
  const squared = squaredDistances(notSolid, 'same', room, halfClear.cells);
  const reachPx = Math.min(MOST_EDGE_REACH_PX, EDGE_REACH_PX / Math.max(detailShare, 0.1));
  const least = (reachPx / scale + 0.5) ** 2;
  const reach = Math.max(LEAST_REACH_CELLS, Math.round(reachPx / scale));
  const parts = hazeParts(width, height);
  const { cells } = halfClear;
  let [hazy, furthest] = [0, 0];
  for (let y = reach; y < height - reach; y += 1) {
    for (let x = reach; x < width - reach; x += 1) {
      const index = y * width + x;
      const square = squared[index] as number;
      if (square <= least || !isWide(cells, index, reach, reach * width)) continue;
      hazy += 1;
      furthest = Math.max(furthest, square);
      parts.add(x, y);
    }
  }
  const spots = parts.spots(scale, area);
  return {
    share: Math.min(1, (hazy * scale * scale) / Math.max(1, inkPx)),
    reachPx: hazy === 0 ? 0 : Math.min(Math.sqrt(furthest), FURTHEST_CELLS) * scale,
    spots,
  };
}

/** A line one pixel wide touches this many cells to a side at most. */
const LEAST_REACH_CELLS = 2;

/** Whether it is half clear a little way on each side too: a hairline is faint but not hazy. */
function isWide(cells: Uint8Array, index: number, across: number, down: number): boolean {
  return (
    cells[index - across] === 1 && cells[index + across] === 1 && cells[index - down] === 1 && cells[index + down] === 1
  );
}

type HazeParts = {
  readonly add: (x: number, y: number) => void;
  readonly spots: (scale: number, area: Spot) => Spot[];
};

/** Gathers hazy cells in parts of the grid, each with the box round those in it; the fullest parts come first. */
function hazeParts(width: number, height: number): HazeParts {
  const size = Math.max(8, Math.ceil(Math.max(width, height) / PARTS));
  const across = Math.ceil(width / size);
  const count = across * Math.ceil(height / size);
  const [left, top] = [new Int32Array(count).fill(width), new Int32Array(count).fill(height)];
  const [right, bottom, cells] = [new Int32Array(count), new Int32Array(count), new Int32Array(count)];
  return {
    add: (x, y) => {
      const part = Math.floor(y / size) * across + Math.floor(x / size);
      left[part] = Math.min(left[part] as number, x);
      top[part] = Math.min(top[part] as number, y);
      right[part] = Math.max(right[part] as number, x + 1);
      bottom[part] = Math.max(bottom[part] as number, y + 1);
      cells[part] = (cells[part] as number) + 1;
    },
    spots: (scale, area) =>
      Array.from(cells, (inside, part) => ({ inside, part }))
        .filter(({ inside }) => inside >= LEAST_CELLS)
        .sort((a, b) => b.inside - a.inside)
        .slice(0, MOST_SPOTS)
        .map(({ part }) => {
          const [x, y] = [(left[part] as number) * scale, (top[part] as number) * scale];
          return {
            x: area.x + x,
            y: area.y + y,
            width: Math.min(area.width, (right[part] as number) * scale) - x,
            height: Math.min(area.height, (bottom[part] as number) * scale) - y,
          };
        }),
  };
}
