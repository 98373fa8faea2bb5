/** What a flood runs over. */
export type Floodable = {
  /** One byte a pixel; a pixel that is marked already is a wall. */
  readonly marks: Uint8Array;
  readonly widthPx: number;
  readonly mayPass: (index: number) => boolean;
};

/**
 * Marks with `mark` every pixel that is reached from the seeds over pixels that may be passed, side by side and not across
 * corners. Stretch by stretch of a row, with a stack of its own: a picture of one colour is as deep as it is large.
 */
export function flood({ marks, widthPx, mayPass }: Floodable, seeds: Iterable<number>, mark: number): void {
  const open = (index: number) => marks[index] === 0 && mayPass(index);
  const stack: number[] = [];
  const pushStretches = (from: number, to: number) => {
    let before = false;
    for (let at = from; at < to; at += 1) {
      const isOpen = open(at);
      if (isOpen && !before) stack.push(at);
      before = isOpen;
    }
  };
  const fillFrom = (index: number) => {
    const row = index - (index % widthPx);
    let from = index;
    while (from > row && open(from - 1)) from -= 1;
    let to = index + 1;
    while (to < row + widthPx && open(to)) to += 1;
    marks.fill(mark, from, to);
    if (row > 0) pushStretches(from - widthPx, to - widthPx);
    if (row + widthPx < marks.length) pushStretches(from + widthPx, to + widthPx);
  };
  for (const seed of seeds) {
    if (open(seed)) fillFrom(seed);
    for (let index = stack.pop(); index !== undefined; index = stack.pop()) if (open(index)) fillFrom(index);
  }
}
