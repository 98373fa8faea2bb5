/** Numbers that look random and are the same for the same seed. */
export type Random = {
  /** From 0 to 1, 1 left out. */
  readonly share: () => number;
  readonly between: (least: number, most: number) => number;
  readonly whole: (least: number, most: number) => number;
  readonly oneOf: <Each>(all: readonly Each[]) => Each;
  readonly seed: () => number;
};

/** Mulberry32 (Tommy Ettinger, public domain; from memory). */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const share = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (least: number, most: number) => least + share() * (most - least);
  const whole = (least: number, most: number) => Math.floor(between(least, most + 1));
  return {
    share,
    between,
    whole,
    oneOf: (all) => {
      const each = all[whole(0, all.length - 1)];
      if (each === undefined) throw new Error('one of nothing');
      return each;
    },
    seed: () => Math.floor(share() * 2 ** 31),
  };
}
