import { describe, expect, it } from 'vitest';
import { type ChartMistake, readChart } from '@/components/blanks/chart-fields';
import { chartMistakeWords } from '@/components/blanks/chart-mistake-words';
import { rowsOfSizes } from '@/components/blanks/chart-rows';
import { MEASURE_NAMES, MEASURE_REFUSALS } from '@/lib/domain/garment/measures';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import { umFromInches } from '@/lib/domain/measure/length';
import { translatorFor } from '@/lib/messages/translator';

const words = {
  t: translatorFor('en', 'blanks'),
  readings: translatorFor('en', 'readings'),
  ageBand: 'youth',
  unit: 'in',
} as const;
const inches = { unit: 'in', currency: 'USD' } as const;

/** The youth starter chart with some measures of its M typed over, inches as text. */
function saidOf(typed: Record<string, string>): string[] {
  const sizes = (starterChart('crew-tee-youth')?.sizes ?? []).map(({ id, label, entered }) => ({
    sizeId: id,
    label,
    entered,
    costMinor: null,
  }));
  const rows = rowsOfSizes(sizes, inches).map((row) => {
    const cells = Object.fromEntries(Object.entries(typed).map(([measure, text]) => [measure, { text, um: null }]));
    return row.label === 'M' ? { ...row, cells: { ...row.cells, ...cells } } : row;
  });
  return readChart(rows, 'crewTee', inches).mistakes.map((mistake) => chartMistakeWords(words, mistake));
}

describe('what is wrong with a chart', () => {
  it('names the size, the measure and the one it does not go with, and says what to do', () => {
    expect(saidOf({ neckWidth: '9', acrossShoulder: '8 1/2' })).toEqual([
      'Youth M: neck width 9 in is wider than the shoulders, 8 1/2 in. Measure again, or leave one out.',
    ]);
    expect(saidOf({ neckWidth: '16' })).toEqual([
      'Youth M: neck width 16 in is wider than the shoulders, about 15 1/2 in. Measure again, or leave one out.',
    ]);
    expect(saidOf({ chestWidth: '16 1/2' })).toEqual([
      'Youth M: chest width 16 1/2 in is less than that of Youth S, 17 in, the size before it. Check both, or put the sizes in order.',
    ]);
    expect(saidOf({ sleeveLength: '' })).toEqual([
      'Youth M: sleeve length is missing. Measure it and type it in, or remove the size.',
    ]);
    expect(saidOf({ bodyLength: 'long' })).toEqual(['Youth M: length “long” is not a length. Type it like 27 1/2.']);
  });

  it('is one tidy sentence or two for every refusal, of every measure, entered or estimated', () => {
    for (const code of MEASURE_REFUSALS) {
      for (const measure of MEASURE_NAMES) {
        for (const um of [umFromInches(9), null]) {
          for (const other of [{ measure, um: umFromInches(8.5), isEstimated: true }, null]) {
            const mistake: ChartMistake = { field: '', row: 1, label: 'M', code, measure, um, other };
            expect(chartMistakeWords(words, mistake)).toMatch(/^Youth M: (?!.*( {2}| [.,:]|\{)).+\.$/);
          }
        }
      }
    }
  });
});
