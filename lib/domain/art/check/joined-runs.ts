/** Joined pixels of one kind: the box around them and how many they are. */
export type JoinedArea = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly areaPx: number;
};

/** How runs of one kind join. */
export type JoinRule = {
  /** Pixels that touch by a corner are joined too. */
  readonly byCorners: boolean;
  /** Is told of every area once it is whole; numbers and not an object, since noise has millions of them. */
  readonly whenWhole: (left: number, top: number, right: number, bottom: number, areaPx: number) => void;
};

export type RunJoiner = {
  readonly run: (start: number, end: number, y: number) => void;
  readonly endRow: (y: number) => void;
  readonly end: () => void;
};

/**
 * Joins runs of pixels into areas while they come, row by row. Keeps only what the last row still touches, so that a
 * picture full of noise needs no more room than a plain one. `right` and `bottom` are not part of an area.
 */
export function joinRuns(widthPx: number, { byCorners, whenWhole }: JoinRule): RunJoiner {
  const reach = byCorners ? 0 : 1;
  const most = widthPx + 2;
  let [lastStart, lastEnd, lastLabel] = [new Int32Array(most), new Int32Array(most), new Int32Array(most)];
  let [start, end, label] = [new Int32Array(most), new Int32Array(most), new Int32Array(most)];
  let [lastCount, count, at] = [0, 0, 0];

  // A row has at most half as many runs as pixels, and only areas touched by two rows are open at once.
  const room = 2 * most;
  const parent = new Int32Array(room);
  const [left, top, right, bottom] = [0, 1, 2, 3].map(() => new Int32Array(room)) as [
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
  ];
  const area = new Float64Array(room);
  const free = Int32Array.from({ length: room }, (_, index) => room - 1 - index);
  const given = new Int32Array(room);
  let [freeCount, givenCount] = [room, 0];

  function rootOf(from: number): number {
    let root = from;
    while (parent[root] !== root) root = parent[root] as number;
    return root;
  }

  function merge(kept: number, gone: number): void {
    parent[gone] = kept;
    given[givenCount] = gone;
    givenCount += 1;
    left[kept] = Math.min(left[kept] as number, left[gone] as number);
    top[kept] = Math.min(top[kept] as number, top[gone] as number);
    right[kept] = Math.max(right[kept] as number, right[gone] as number);
    bottom[kept] = Math.max(bottom[kept] as number, bottom[gone] as number);
    area[kept] = (area[kept] as number) + (area[gone] as number);
  }

  function run(from: number, to: number, y: number): void {
    while (at < lastCount && (lastEnd[at] as number) < from + reach) at += 1;
    let root = -1;
    for (let above = at; above < lastCount && (lastStart[above] as number) <= to - reach; above += 1) {
      const other = rootOf(lastLabel[above] as number);
      if (root < 0) root = other;
      else if (other !== root) merge(root, other);
    }
    if (root < 0) {
      freeCount -= 1;
      root = free[freeCount] as number;
      parent[root] = root;
      left[root] = from;
      right[root] = to;
      top[root] = y;
      area[root] = 0;
    } else {
      left[root] = Math.min(left[root] as number, from);
      right[root] = Math.max(right[root] as number, to);
    }
    bottom[root] = y + 1;
    area[root] = (area[root] as number) + (to - from);
    start[count] = from;
    end[count] = to;
    label[count] = root;
    count += 1;
  }

  function release(root: number): void {
    free[freeCount] = root;
    freeCount += 1;
  }

  function endRow(y: number): void {
    for (let index = 0; index < count; index += 1) label[index] = rootOf(label[index] as number);
    for (let index = 0; index < lastCount; index += 1) {
      const one = lastLabel[index] as number;
      // An area that this row did not reach is whole; -1 keeps its other runs from telling of it again.
      if (parent[one] !== one || (bottom[one] as number) > y) continue;
      whenWhole(
        left[one] as number,
        top[one] as number,
        right[one] as number,
        bottom[one] as number,
        area[one] as number,
      );
      parent[one] = -1;
      release(one);
    }
    while (givenCount > 0) {
      givenCount -= 1;
      release(given[givenCount] as number);
    }
    [lastStart, start] = [start, lastStart];
    [lastEnd, end] = [end, lastEnd];
    [lastLabel, label] = [label, lastLabel];
    lastCount = count;
    count = 0;
    at = 0;
  }

  return { run, endRow, end: () => endRow(Number.MAX_SAFE_INTEGER) };
}
