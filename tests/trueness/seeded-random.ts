/** A source of numbers that is the same every time for one seed (mulberry32, public domain, by Tommy Ettinger). */
export type Random = {
  /** From `least` up to but not `most`. */
  readonly between: (least: number, most: number) => number;
  /** A whole number from `least` to `most`, both included. */
  readonly whole: (least: number, most: number) => number;
  readonly oneOf: <Value>(values: readonly Value[]) => Value;
  readonly chance: (share: number) => boolean;
};

/** Starts a source of numbers. */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  function next(): number {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }
  return {
    between: (least, most) => least + (most - least) * next(),
    whole: (least, most) => least + Math.floor((most - least + 1) * next()),
    oneOf: (values) => {
      const value = values[Math.floor(values.length * next())];
      if (value === undefined) throw new Error('one of nothing');
      return value;
    },
    chance: (share) => next() < share,
  };
}
