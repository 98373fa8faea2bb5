import { type ArtFacts, MOST_SPOTS, type Spot } from '../art-facts';
import { INK_ALPHA } from '../ink';
import type { CellGrid } from './cell-grid';
import { FURTHEST_CELLS, squaredDistances } from './edge-distance';
import { type PixelWords, SOLID_ALPHA } from './pixel-classes';

/** How far half-clear pixels of a smooth edge reach from solid ink. In pixels (common practice, no source). */
export const EDGE_REACH_PX = 2;
/** However coarse a picture is, its edges reach no further. */
const MOST_EDGE_REACH_PX = 6;

/** Haze is marked part by part; so many parts make up the long side. */
const PARTS = 24;
/** A part with fewer hazy cells than this is not marked. */
const LEAST_CELLS = 6;

/**
 * Half-clear ink further from solid ink than a smooth edge reaches. `solid` has the cells with solid ink in them, and
 * `detailShare` how coarse the picture is: the edges of an enlarged one reach further and are blurred, not hazy.
 */
export function hazeOf(
  { words, widthPx }: PixelWords,
  solid: CellGrid,
  detailShare: number,
  inkPx: number,
): ArtFacts['haze'] {
  const { width, height, scale, area } = solid;
  const squared = squaredDistances(inverse(solid), 'same');
  const reachPx = Math.min(MOST_EDGE_REACH_PX, EDGE_REACH_PX / Math.max(detailShare, 0.1));
  const least = (reachPx / scale + 0.5) ** 2;
  const parts = hazeParts(width, height);
  let [hazy, furthest] = [0, 0];
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const square = squared[y * width + x] as number;
      if (square <= least || !isHazy(words, widthPx, area, x * scale, y * scale, scale, reachPx)) continue;
      hazy += 1;
      if (square > furthest) furthest = square;
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

function inverse(grid: CellGrid): CellGrid {
  return { ...grid, cells: grid.cells.map((cell) => 1 - cell) };
}

/** Whether a cell is half clear, and so are those a little way on each side: a hairline is faint but not hazy. */
function isHazy(
  words: Uint32Array,
  widthPx: number,
  area: Spot,
  left: number,
  top: number,
  scale: number,
  reachPx: number,
): boolean {
  const [x, y] = [area.x + left, area.y + top];
  if (!isHalfClear(words[y * widthPx + x] as number)) return false;
  const reach = Math.max(scale, Math.round(reachPx));
  const inX = x - reach >= area.x && x + reach < area.x + area.width;
  const inY = y - reach >= area.y && y + reach < area.y + area.height;
  if (!inX || !inY) return false;
  const at = (dx: number, dy: number) => isHalfClear(words[(y + dy) * widthPx + x + dx] as number);
  return at(-reach, 0) && at(reach, 0) && at(0, -reach) && at(0, reach);
}

function isHalfClear(word: number): boolean {
  const alpha = word >>> 24;
  return alpha >= INK_ALPHA && alpha < SOLID_ALPHA;
}

type HazeParts = {
  readonly add: (x: number, y: number) => void;
  readonly spots: (scale: number, area: Spot) => Spot[];
};

/** Gathers hazy cells in parts of the grid, each with the box round those in it; the fullest parts come first. */
function hazeParts(width: number, height: number): HazeParts {
  const size = Math.max(8, Math.ceil(Math.max(width, height) / PARTS));
  const across = Math.ceil(width / size);
  const parts = new Map<number, { left: number; top: number; right: number; bottom: number; cells: number }>();
  return {
    add: (x, y) => {
      const key = Math.floor(y / size) * across + Math.floor(x / size);
      const part = parts.get(key);
      if (!part) parts.set(key, { left: x, top: y, right: x + 1, bottom: y + 1, cells: 1 });
      else {
        part.left = Math.min(part.left, x);
        part.right = Math.max(part.right, x + 1);
        part.bottom = y + 1;
        part.cells += 1;
      }
    },
    spots: (scale, area) =>
      [...parts.values()]
        .filter(({ cells }) => cells >= LEAST_CELLS)
        .sort((a, b) => b.cells - a.cells)
        .slice(0, MOST_SPOTS)
        .map(({ left, top, right, bottom }) => ({
          x: area.x + left * scale,
          y: area.y + top * scale,
          width: Math.min(area.width - left * scale, (right - left) * scale),
          height: Math.min(area.height - top * scale, (bottom - top) * scale),
        })),
  };
}
