import { INK_ALPHA } from '../ink';
import type { MendPicture } from './mend-picture';

/** A stretch of pixels of one row that print: from `from` to before `to`. */
export type InkRun = { readonly y: number; readonly from: number; readonly to: number };

/** Runs of pixels that print, in the picture's order, and how many pixels hang together with each. */
export type JoinedInk = {
  readonly runCount: number;
  readonly runAt: (run: number) => InkRun;
  /** How many pixels the piece of ink has that a run belongs to. */
  readonly piecePx: (run: number) => number;
};

/**
 * The pieces of ink of a picture: pixels that print and touch at a side or a corner belong together. Found by runs of rows
 * and a forest of joined runs (Galler and Fischer 1964), so that the room it takes grows with the edges, not with the area.
 */
export function joinedInk(picture: MendPicture): JoinedInk {
  const runs = inkRuns(picture);
  const runCount = runs.length / 3;
  const parents = Int32Array.from({ length: runCount }, (_, run) => run);
  joinRows(runs, parents);
  const sizes = new Int32Array(runCount);
  for (let run = 0; run < runCount; run += 1) {
    const piece = rootOf(parents, run);
    sizes[piece] = (sizes[piece] ?? 0) + (runs[run * 3 + 2] ?? 0) - (runs[run * 3 + 1] ?? 0);
  }
  return {
    runCount,
    runAt: (run) => ({ y: runs[run * 3] ?? 0, from: runs[run * 3 + 1] ?? 0, to: runs[run * 3 + 2] ?? 0 }),
    piecePx: (run) => sizes[rootOf(parents, run)] ?? 0,
  };
}

/** Three numbers a run: its row, its first pixel, one past its last. */
function inkRuns({ rgba, widthPx, heightPx }: MendPicture): Int32Array {
  let runs = new Int32Array(3 * 1024);
  let length = 0;
  for (let y = 0; y < heightPx; y += 1) {
    const row = y * widthPx * 4 + 3;
    for (let x = 0; x < widthPx; x += 1) {
      if ((rgba[row + x * 4] ?? 0) < INK_ALPHA) continue;
      const from = x;
      while (x < widthPx && (rgba[row + x * 4] ?? 0) >= INK_ALPHA) x += 1;
      if (length === runs.length) {
        const larger = new Int32Array(runs.length * 2);
        larger.set(runs);
        runs = larger;
      }
      runs.set([y, from, x], length);
      length += 3;
    }
  }
  return runs.subarray(0, length);
}

/** Joins each run with those of the row above that it touches, corners included. */
function joinRows(runs: Int32Array, parents: Int32Array): void {
  let above = 0;
  for (let run = 0; run < parents.length; run += 1) {
    const [y, from, to] = [runs[run * 3] ?? 0, runs[run * 3 + 1] ?? 0, runs[run * 3 + 2] ?? 0];
    const isBefore = (other: number) => {
      const row = runs[other * 3] ?? 0;
      return row < y - 1 || (row === y - 1 && (runs[other * 3 + 2] ?? 0) < from);
    };
    while (above < run && isBefore(above)) above += 1;
    for (let other = above; other < run; other += 1) {
      if (runs[other * 3] !== y - 1 || (runs[other * 3 + 1] ?? 0) > to) break;
      join(parents, run, other);
    }
  }
}

function join(parents: Int32Array, one: number, other: number): void {
  const [first, second] = [rootOf(parents, one), rootOf(parents, other)];
  parents[Math.max(first, second)] = Math.min(first, second);
}

function rootOf(parents: Int32Array, run: number): number {
  let at = run;
  while (parents[at] !== at) {
    const next = parents[at] ?? at;
    // Halving the way shortens it for whoever asks next.
    parents[at] = parents[next] ?? next;
    at = next;
  }
  return at;
}
