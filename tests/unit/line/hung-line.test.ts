import { describe, expect, it } from 'vitest';
import { hungLine } from '@/components/line/hung-line';
import { flatOf } from '@/lib/domain/layout/scene';
import { garmentOf, offeredSizes } from '@/lib/domain/layout/sizes';
import { hung as blankOf, oneGarment } from '../layout/hung-sample';
import { teeWithPrints } from '../layout/sample-layout';

const flats = teeWithPrints([])
  .garments.flatMap(offeredSizes)
  .map(({ blank, size }) => flatOf(blank.kind, size, 'front'));
const hung = hungLine(flats);
const hoods = offeredSizes(garmentOf(oneGarment(blankOf('pullover-hood-adult')), 'tee')).map(({ blank, size }) =>
  flatOf(blank.kind, size, 'front'),
);

describe('the line', () => {
  it('gives all sizes places of one height, so that they hang at one scale', () => {
    expect(new Set(hung.map(({ box }) => Math.round(box.height * 1000))).size).toBe(1);
  });

  it.each([
    ['each garment', flats],
    ['each hood', hoods],
  ])('shows %s whole', (_what, shown) => {
    for (const [index, { box }] of hungLine(shown).entries()) {
      const own = shown[index]?.box;
      if (!own) throw new Error(`no flat ${index}`);
      expect(box.x).toBeLessThanOrEqual(own.x);
      expect(box.x + box.width).toBeGreaterThanOrEqual(own.x + own.width);
      expect(box.y).toBeLessThanOrEqual(own.y);
      expect(box.y + box.height).toBeGreaterThanOrEqual(own.y + own.height);
    }
  });

  it('is one line from end to end, and each garment hangs from it', () => {
    const below = hung.map(({ line, box }) => line.map((y) => y - box.y));
    for (const [index, heights] of below.slice(1).entries()) expect(heights[0]).toBeCloseTo(below[index]?.[2] ?? 0, 9);
    for (const { line, pegs } of hung) for (const peg of pegs) expect(peg.y).toBeCloseTo(line[1], 9);
    expect(below[0]?.[0]).toBeCloseTo(below.at(-1)?.[2] ?? 0, 9);
    expect(Math.max(...below.flat())).toBeGreaterThan(below[0]?.[0] ?? 0);
  });
});
