import { INK_ALPHA } from '../ink';
import { copyOf, type MendPicture, wholePixels } from './mend-picture';
import { spotThreshold } from './spot-ranks';

/** From here on no eye tells a pixel from a solid one (common practice, no source). */
const SOLID_ALPHA = 250;

/** A smooth edge is this wide at most: a half-clear pixel with solid ink and clear room as near is an edge and no fade. */
const EDGE_PX = 2;

/** More than the pixels of the largest cell: what a key has room for behind its order. */
const KEY_STEPS = 1 << 18;

/**
 * The picture with its fades as solid dots on a turned grid, `cellPx` from dot to dot. In each cell as many pixels become
 * solid as the alpha of its pixels adds up to, what is over is handed to the next cell: the dots hold as much ink as the fade
 * did. Solid ink stays; the smooth edge of solid ink becomes hard at its middle.
 */
export function dots(picture: MendPicture, cellPx: number, turnCentideg: number): MendPicture {
  const { rgba, widthPx } = picture;
  const dotted = copyOf(picture);
  const onto = wholePixels(dotted);
  const clear = (index: number) => {
    onto[index] = 0;
  };
  const fade = fadePixels(picture, (index, alpha) => {
    if (alpha >= 128) dotted.rgba[index * 4 + 3] = 255;
    else clear(index);
  });
  const grid = turnedGrid(cellPx, turnCentideg);
  let left = 0;
  for (const cell of byCells(fade, widthPx, grid)) {
    let wanted = left;
    const keys = new Float64Array(cell.length);
    for (let place = 0; place < cell.length; place += 1) {
      const index = cell[place] ?? 0;
      const x = (index % widthPx) + 0.5;
      const y = (index - (index % widthPx)) / widthPx + 0.5;
      const cover = (rgba[index * 4 + 3] ?? 0) / 255;
      wanted += cover;
      const early = 1 + spotThreshold(grid.across(x, y), grid.down(x, y)) - cover;
      keys[place] = Math.round(early * 1e6) * KEY_STEPS + place;
    }
    const solid = Math.min(cell.length, Math.max(0, Math.round(wanted)));
    left = wanted - solid;
    keys.sort();
    for (let rank = 0; rank < keys.length; rank += 1) {
      const index = cell[(keys[rank] ?? 0) % KEY_STEPS] ?? 0;
      if (rank < solid) dotted.rgba[index * 4 + 3] = 255;
      else clear(index);
    }
  }
  return dotted;
}

/** Where a point of the picture lies on the grid of dots, in cells. */
type Grid = {
  readonly across: (x: number, y: number) => number;
  readonly down: (x: number, y: number) => number;
};

/** A grid with so many px from dot to dot, its rows turned clockwise. */
function turnedGrid(cellPx: number, turnCentideg: number): Grid {
  const turn = (turnCentideg / 18_000) * Math.PI;
  const [cosine, sine] = [Math.cos(turn) / cellPx, Math.sin(turn) / cellPx];
  return { across: (x, y) => x * cosine + y * sine, down: (x, y) => y * cosine - x * sine };
}

/** The half-clear pixels that are a fade; the others of them, edges, are told to `atEdge`. */
function fadePixels(picture: MendPicture, atEdge: (index: number, alpha: number) => void): Uint32Array {
  const { rgba, widthPx, heightPx } = picture;
  const isFade = (index: number) => {
    const alpha = rgba[index * 4 + 3] ?? 0;
    return alpha > 0 && alpha < 255;
  };
  let count = 0;
  const found = new Uint8Array(widthPx * heightPx);
  for (let index = 0; index < found.length; index += 1) {
    if (!isFade(index)) continue;
    if (isEdge(picture, index)) atEdge(index, rgba[index * 4 + 3] ?? 0);
    else {
      found[index] = 1;
      count += 1;
    }
  }
  const fade = new Uint32Array(count);
  for (let index = 0, at = 0; index < found.length; index += 1) {
    if (found[index] === 0) continue;
    fade[at] = index;
    at += 1;
  }
  return fade;
}

function isEdge({ rgba, widthPx, heightPx }: MendPicture, index: number): boolean {
  const x = index % widthPx;
  const y = (index - x) / widthPx;
  let [nearSolid, nearClear] = [false, false];
  for (let row = Math.max(0, y - EDGE_PX); row <= Math.min(heightPx - 1, y + EDGE_PX); row += 1) {
    for (let column = Math.max(0, x - EDGE_PX); column <= Math.min(widthPx - 1, x + EDGE_PX); column += 1) {
      const alpha = rgba[(row * widthPx + column) * 4 + 3] ?? 0;
      nearSolid ||= alpha >= SOLID_ALPHA;
      nearClear ||= alpha < INK_ALPHA;
    }
    if (nearSolid && nearClear) return true;
  }
  return false;
}

/** The pixels cell by cell, cells row by row of the grid; a cell's pixels in the picture's order. */
function* byCells(pixels: Uint32Array, widthPx: number, grid: Grid): Generator<Uint32Array> {
  const names = cellNames(pixels, widthPx, grid);
  let most = -1;
  for (const name of names) if (name > most) most = name;
  const ends = new Uint32Array(most + 2);
  for (const name of names) ends[name + 1] = (ends[name + 1] ?? 0) + 1;
  for (let cell = 1; cell < ends.length; cell += 1) ends[cell] = (ends[cell] ?? 0) + (ends[cell - 1] ?? 0);
  const sorted = new Uint32Array(pixels.length);
  const filled = ends.slice();
  for (const [place, name] of names.entries()) {
    const at = filled[name] ?? 0;
    sorted[at] = pixels[place] ?? 0;
    filled[name] = at + 1;
  }
  for (let cell = 0; cell + 1 < ends.length; cell += 1) {
    const [from, to] = [ends[cell] ?? 0, ends[cell + 1] ?? 0];
    if (to > from) yield sorted.subarray(from, to);
  }
}

/** The number of the cell each pixel lies in, counted row by row of the grid from its first one that is needed. */
function cellNames(pixels: Uint32Array, widthPx: number, grid: Grid): Uint32Array {
  const cellOf = (index: number, along: (x: number, y: number) => number) => {
    const x = index % widthPx;
    return Math.floor(along(x + 0.5, (index - x) / widthPx + 0.5) + 0.5);
  };
  let [left, right, top] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const index of pixels) {
    const column = cellOf(index, grid.across);
    left = Math.min(left, column);
    right = Math.max(right, column);
    top = Math.min(top, cellOf(index, grid.down));
  }
  const columns = right - left + 1;
  return pixels.map((index) => (cellOf(index, grid.down) - top) * columns + cellOf(index, grid.across) - left);
}
