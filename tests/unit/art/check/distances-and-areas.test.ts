import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CellGrid } from '@/lib/domain/art/check/cell-grid';
import { type Beyond, distanceRoom, squaredDistances } from '@/lib/domain/art/check/edge-distance';
import { joinRuns } from '@/lib/domain/art/check/joined-runs';

const anyGrid = fc
  // Rows are whole fours.
  .record({ width: fc.constantFrom(4, 8, 12), height: fc.integer({ min: 1, max: 14 }) })
  .chain(({ width, height }) =>
    fc
      .array(fc.constantFrom(1, 1, 1, 0), { minLength: width * height, maxLength: width * height })
      .map((cells): CellGrid => {
        const area = { x: 0, y: 0, width, height };
        return { cells: Uint8Array.from(cells), width, height, scale: 1, area };
      }),
  );

/** Looks at every other cell, and at a rim of nothing where there is one. */
function squaredByHand({ cells, width, height }: CellGrid, beyond: Beyond, x: number, y: number): number {
  let least = 32 * 32;
  for (let oy = -1; oy <= height; oy += 1) {
    for (let ox = -1; ox <= width; ox += 1) {
      const outside = ox < 0 || oy < 0 || ox === width || oy === height;
      const empty = outside ? beyond === 'nothing' : cells[oy * width + ox] === 0;
      if (empty) least = Math.min(least, (ox - x) ** 2 + (oy - y) ** 2);
    }
  }
  return least;
}

describe('the distance to the nearest edge', () => {
  it('is what looking at every other cell gives', () => {
    fc.assert(
      fc.property(anyGrid, fc.constantFrom<Beyond>('nothing', 'same'), (grid, beyond) => {
        const squared = squaredDistances(grid, beyond, distanceRoom(grid));
        for (let index = 0; index < grid.cells.length; index += 1) {
          const [x, y] = [index % grid.width, Math.floor(index / grid.width)];
          expect(squared[index]).toBe(grid.cells[index] === 0 ? 0 : squaredByHand(grid, beyond, x, y));
        }
      }),
    );
  });

  it('is the same across a wide plain area, which is parted', () => {
    const [width, height] = [300, 3];
    const cells = new Uint8Array(width * height).fill(1);
    cells[width + 10] = 0;
    const grid: CellGrid = { cells, width, height, scale: 1, area: { x: 0, y: 0, width, height } };
    const squared = squaredDistances(grid, 'same', distanceRoom(grid));
    for (let x = 0; x < width; x += 1) expect(squared[x]).toBe(squaredByHand(grid, 'same', x, 0));
  });
});

/** Sizes of joined areas by filling from cell to cell. */
function sizesByHand({ cells, width, height }: CellGrid, byCorners: boolean): number[] {
  const sizes: number[] = [];
  const marked = new Set([...cells.keys()].filter((index) => cells[index] === 1));
  while (marked.size > 0) {
    const [start = 0] = marked;
    marked.delete(start);
    const open = [start];
    let size = 0;
    for (let index = open.pop(); index !== undefined; index = open.pop()) {
      size += 1;
      const [x, y] = [index % width, Math.floor(index / width)];
      for (const [dx, dy] of byCorners ? [...SIDES, ...CORNERS] : SIDES) {
        const [nx, ny] = [x + dx, y + dy];
        const next = ny * width + nx;
        if (nx < 0 || ny < 0 || nx >= width || ny >= height || !marked.delete(next)) continue;
        open.push(next);
      }
    }
    sizes.push(size);
  }
  return sizes.sort((a, b) => a - b);
}

const SIDES = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;
const CORNERS = [
  [1, 1],
  [-1, 1],
  [1, -1],
  [-1, -1],
] as const;

describe('joined areas', () => {
  it('are those that filling from pixel to pixel finds', () => {
    fc.assert(
      fc.property(anyGrid, fc.boolean(), (grid, byCorners) => {
        const sizes: number[] = [];
        const joiner = joinRuns(grid.width, { byCorners, whenWhole: (_l, _t, _r, _b, areaPx) => sizes.push(areaPx) });
        for (let y = 0; y < grid.height; y += 1) {
          for (let x = 0; x < grid.width; x += 1) {
            const start = x;
            while (x < grid.width && grid.cells[y * grid.width + x] === 1) x += 1;
            if (x > start) joiner.run(start, x, y);
          }
          joiner.endRow(y);
        }
        joiner.end();
        expect(sizes.sort((a, b) => a - b)).toEqual(sizesByHand(grid, byCorners));
      }),
    );
  });
});
