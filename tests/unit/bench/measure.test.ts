import { describe, expect, it } from 'vitest';
import { median, medianOfRatios } from '../../bench/measure';

describe('measuring against a floor', () => {
  it('takes the middle of the values', () => {
    expect([median([3, 1, 2]), median([4, 1, 3, 2])]).toEqual([2, 2.5]);
    expect(() => median([])).toThrow();
  });

  it('is not fooled by a machine that grows slower: drift cancels between turns', async () => {
    let speed = 1000;
    const drifting = (share: number) => async () => {
      speed *= 0.99;
      return speed * share;
    };
    const { ratio } = await medianOfRatios(drifting(0.5), drifting(1), { rounds: 5 });
    expect(Math.abs(ratio - 0.5)).toBeLessThan(0.01);
  });

  it('takes turns, changes who goes first, and throws the warm-up away', async () => {
    const turns: string[] = [];
    const noted = (name: string, value: number) => async () => {
      turns.push(name);
      return turns.length <= 4 ? 1000 : value;
    };
    const { ratios } = await medianOfRatios(noted('s', 6), noted('f', 2), { rounds: 3, warmUps: 2 });
    expect(turns.join('')).toBe('sffssffssf');
    expect(ratios).toEqual([3, 3, 3]);
  });

  it('refuses what cannot be a measurement', async () => {
    const nothing = async () => 0;
    await expect(medianOfRatios(nothing, nothing, { rounds: 1 })).rejects.toThrow(/not a measurement/);
  });
});
