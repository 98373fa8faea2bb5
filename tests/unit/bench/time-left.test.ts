import { describe, expect, it } from 'vitest';
import { timeLeft } from '@/components/bench/time-left';

const NOW = new Date('2026-11-25T12:00:00Z');
const inHours = (hours: number) => timeLeft(new Date(NOW.getTime() + hours * 3_600_000), NOW);

// Hours under two days, days after: the shop's own rule for its bench; common practice, no source.
describe('time left', () => {
  it.each([
    [0.5, 'underAnHour', 0],
    [1, 'hours', 1],
    [31.9, 'hours', 31],
    [47.99, 'hours', 47],
    [48, 'days', 2],
    [9 * 24 + 5, 'days', 9],
  ] as const)('is told for %s hours as %s, whole ones only', (hours, unit, count) => {
    expect(inHours(hours)).toMatchObject({ isLate: false, unit, count, hours });
  });

  it.each([
    [-0.2, 'underAnHour', 0],
    [-5.5, 'hours', 5],
    [-49, 'days', 2],
  ] as const)('is told as lateness once it has run out (%s hours), with no tape left', (hours, unit, count) => {
    expect(inHours(hours)).toMatchObject({ isLate: true, unit, count, hours: 0, isLittle: true });
  });

  it('is little below three days', () => {
    expect([inHours(71.9).isLittle, inHours(72).isLittle]).toEqual([true, false]);
  });
});
