import { describe, expect, it } from 'vitest';
import { checkChartSteps } from '@/lib/domain/garment/chart-steps';
import { AGE_BANDS, GARMENT_KINDS } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS, starterChart } from '@/lib/domain/garment/starter-charts';
import { blankSchema } from '@/lib/domain/layout/document';
import { blankFromChart } from '@/lib/domain/layout/garment-edits';
import { umFromInches } from '@/lib/domain/measure/length';
import designations from '../../data/en13402-3-size-designation.json';

function chestOf(id: string, label: string): number {
  return starterChart(id)?.sizes.find((size) => size.label === label)?.entered.chestWidth ?? Number.NaN;
}

describe('starter charts', () => {
  // Common practice; several published makers' sheets agree. Inches: chest, length of the smallest; of the largest.
  it.each([
    ['crew-tee-adult', 'S', [18, 28], '5XL', [32, 35]],
    ['crew-tee-youth', 'XS', [16, 20.5], 'XL', [20, 26.5]],
    ['crew-sweatshirt-adult', 'S', [20, 27], '2XL', [28, 31]],
    ['pullover-hood-adult', 'S', [19.5, 27], '2XL', [27.5, 31]],
    ['fitted-tee-adult', 'S', [18, 25], '2XL', [26, 29]],
  ] as const)('begin and step as stock blanks do: %s', (id, small, smallest, large, largest) => {
    const inches = (label: string) => {
      const entered = starterChart(id)?.sizes.find((size) => size.label === label)?.entered;
      return [entered?.chestWidth ?? 0, entered?.bodyLength ?? 0].map((um) => um / umFromInches(1));
    };
    expect([inches(small), inches(large)]).toEqual([smallest, largest]);
  });

  // EN 13402-3: a letter code stands for a range of the body's chest or bust girth, cm. The ranges are the standard's; that
  // a tee has up to 10 cm of ease over the middle of it, and a sweatshirt or hood up to 20, is common practice, no source.
  it.each([
    ['crew-tee-adult', 'men_chest', 0, 10],
    ['v-neck-tee-adult', 'men_chest', 0, 10],
    ['long-sleeve-tee-adult', 'men_chest', 0, 10],
    ['raglan-adult', 'men_chest', 0, 10],
    ['tank-adult', 'men_chest', 0, 10],
    ['polo-adult', 'men_chest', 0, 10],
    ['fitted-tee-adult', 'women_bust', 0, 10],
    ['crew-sweatshirt-adult', 'men_chest', 8, 20],
    ['pullover-hood-adult', 'men_chest', 6, 18],
    ['zip-hood-adult', 'men_chest', 6, 18],
  ] as const)('leave a body of its letter code the ease it needs: %s, %s', (id, girths, least, most) => {
    for (const [label, code] of [
      ['S', 'S'],
      ['M', 'M'],
      ['L', 'L'],
      ['XL', 'XL'],
      ['2XL', 'XXL'],
      ['3XL', '3XL'],
    ] as const) {
      const [from = 0, to = 0] = designations[girths][code].split('-').map(Number.parseFloat);
      const girthCm = (2 * chestOf(id, label)) / 10_000;
      const easeCm = girthCm - (from + to) / 2;
      expect(easeCm, label).toBeGreaterThanOrEqual(least);
      expect(easeCm, label).toBeLessThanOrEqual(most);
    }
  });

  it('are there for every kind, and for youths, toddlers and infants', () => {
    expect(new Set(STARTER_CHARTS.map(({ kind }) => kind))).toEqual(new Set(GARMENT_KINDS));
    expect(new Set(STARTER_CHARTS.map(({ ageBand }) => ageBand))).toEqual(new Set(AGE_BANDS));
    expect(new Set(STARTER_CHARTS.map(({ id }) => id)).size).toBe(STARTER_CHARTS.length);
  });

  it.each(STARTER_CHARTS)('name each size once, grow, and make a blank: $id', (chart) => {
    expect(new Set(chart.sizes.map(({ id }) => id)).size).toBe(chart.sizes.length);
    expect(checkChartSteps(chart.sizes)).toEqual([]);
    const blank = blankFromChart(chart, 'blank', chart.id, '');
    expect(blankSchema.parse(JSON.parse(JSON.stringify(blank)))).toEqual(blank);
  });
});

describe('size steps', () => {
  const sized = (id: string, chest: number, length?: number) => ({
    id,
    entered: { chestWidth: umFromInches(chest), ...(length !== undefined && { bodyLength: umFromInches(length) }) },
  });

  it('that shrink are named with the size, the one before it and the measure', () => {
    expect(checkChartSteps([sized('S', 18, 28), sized('M', 22, 29), sized('L', 20, 30)])).toEqual([
      { reason: 'shrinks', sizeId: 'L', afterSizeId: 'M', measure: 'chestWidth' },
    ]);
  });

  it('may stay, and may leave a measure out in between', () => {
    expect(checkChartSteps([sized('S', 18, 28), sized('M', 20), sized('L', 20, 28)])).toEqual([]);
    expect(checkChartSteps([sized('S', 18, 28), sized('M', 20), sized('L', 22, 27)])).toEqual([
      { reason: 'shrinks', sizeId: 'L', afterSizeId: 'S', measure: 'bodyLength' },
    ]);
  });
});
