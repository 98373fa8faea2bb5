import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chartField, readChart, rowsOfFields } from '@/components/blanks/chart-fields';
import { type ChartRow, rowsOfSizes, rowsWithReading } from '@/components/blanks/chart-rows';
import type { StyleSize } from '@/lib/domain/garment/blank-style';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import { umFromInches } from '@/lib/domain/measure/length';

const inches = { unit: 'in', currency: 'USD' } as const;

function starterSizes(id: string): StyleSize[] {
  return (starterChart(id)?.sizes ?? []).map(({ id: sizeId, label, entered }) => ({
    sizeId,
    label,
    entered,
    costMinor: 380,
  }));
}

const labelled = (rows: readonly ChartRow[]) => rows.map(({ label }) => label);

describe('a chart in its table', () => {
  it('is the same chart to the micrometre when nobody types into it, in either unit', () => {
    const grown = starterSizes('crew-tee-adult');
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 12_699 }),
        fc.constantFrom('in' as const, 'cm' as const),
        (moreUm, unit) => {
          const sizes = grown.map((size) => ({
            ...size,
            entered: Object.fromEntries(Object.entries(size.entered).map(([name, um]) => [name, um + moreUm])),
          }));
          const units = { unit, currency: 'USD' };
          expect(readChart(rowsOfSizes(sizes, units), 'crewTee', units)).toEqual({ sizes, mistakes: [] });
        },
      ),
    );
  });

  it('takes what is typed over a measure, in the shop’s unit or another', () => {
    const rows = rowsOfSizes(starterSizes('crew-tee-adult').slice(0, 1), inches).map((row) => ({
      ...row,
      cells: {
        ...row.cells,
        chestWidth: { text: '18 1/4', um: row.cells.chestWidth?.um ?? null },
        bodyLength: { text: '71 cm', um: row.cells.bodyLength?.um ?? null },
      },
    }));
    const [size] = readChart(rows, 'crewTee', inches).sizes;
    expect(size?.entered).toMatchObject({ chestWidth: umFromInches(18.25), bodyLength: 710_000 });
  });

  it('is read from the fields its form sends, in the order of its rows', () => {
    const typed = {
      [chartField.rows]: 'b a',
      [chartField.label('a')]: 'M',
      [chartField.measure('chestWidth', 'a')]: '20',
      [chartField.exact('chestWidth', 'a')]: '508001',
      [chartField.cost('a')]: '3.80',
      [chartField.label('b')]: 'S',
    };
    const rows = rowsOfFields(typed) ?? [];
    expect(labelled(rows)).toEqual(['S', 'M']);
    expect(rows[1]).toMatchObject({ id: 'a', cost: '3.80', cells: { chestWidth: { text: '20', um: 508_001 } } });
  });

  it('names every row and field something is wrong with, and leaves out rows nobody typed into', () => {
    const [small, medium] = rowsOfSizes(starterSizes('crew-tee-adult'), inches);
    if (!(small && medium)) throw new Error('two sizes');
    const rows: ChartRow[] = [
      { ...small, label: '', cost: 'four' },
      { id: 'empty', label: ' ', cells: {}, cost: '' },
      {
        ...medium,
        cells: { ...medium.cells, chestWidth: { text: 'wide', um: null }, neckWidth: { text: '0', um: null } },
      },
    ];
    expect(readChart(rows, 'crewTee', inches).mistakes).toMatchObject([
      { code: 'labelMissing', row: 1, field: chartField.label(small.id) },
      { code: 'notAnAmount', row: 1, text: 'four' },
      { code: 'notALength', row: 3, label: 'M', measure: 'chestWidth', text: 'wide' },
      { code: 'notPositive', row: 3, measure: 'neckWidth' },
    ]);
  });
});

describe('a chart that was read, put into the table', () => {
  const before = rowsOfSizes(starterSizes('crew-tee-adult'), inches);
  const size = (label: string, chest: number, costMinor: number | null = null) => ({
    label,
    entered: { chestWidth: umFromInches(chest), bodyLength: umFromInches(30), sleeveLength: umFromInches(9) },
    costMinor,
  });
  const put = (sizes: ReturnType<typeof size>[], rows = before) => {
    let made = 0;
    return rowsWithReading(rows, { sizes, faults: [] }, inches, () => `new-${made++}`);
  };

  it('keeps the id and the cost of a size with the same label, capitals or not', () => {
    const [row] = put([size('xl', 24)]).filter(({ label }) => label === 'XL');
    expect(row).toMatchObject({ id: 'XL', cost: '3.80', cells: { chestWidth: { text: '24' } } });
    expect(put([size('XL', 24, 410)]).find(({ id }) => id === 'XL')?.cost).toBe('4.10');
  });

  it('leaves sizes it does not name where they were, and adds those it names anew', () => {
    const rows = put([size('XS', 16), size('M', 20), size('L', 22)]);
    expect(labelled(rows)).toEqual(['S', 'XS', 'M', 'L', 'XL', '2XL', '3XL', '4XL', '5XL']);
    expect(rows.find(({ label }) => label === 'XS')?.id).toBe('new-0');
  });

  it('takes the order of the chart where it names them all', () => {
    const labels = labelled(before).toReversed();
    expect(labelled(put(labels.map((label) => size(label, 20))))).toEqual(labels);
  });

  it('never loses a size and never has one twice', () => {
    const label = fc.constantFrom('XS', 'S', 'M', 'L', 'XL', '2XL', '6XL');
    fc.assert(
      fc.property(fc.uniqueArray(label), fc.subarray(before), (read, rows) => {
        const after = put(
          read.map((each) => size(each, 20)),
          rows,
        );
        expect(labelled(after).toSorted()).toEqual([...new Set([...read, ...labelled(rows)])].toSorted());
        expect(new Set(after.map(({ id }) => id)).size).toBe(after.length);
      }),
    );
  });

  it('shows in a cell that could not be read what stood there', () => {
    const fault = {
      code: 'notALength',
      row: 2,
      column: 3,
      found: 'see note',
      measure: 'neckWidth',
      size: 'M',
    } as const;
    const rows = rowsWithReading([], { sizes: [size('M', 20)], faults: [fault] }, inches, () => 'new');
    expect(rows[0]?.cells.neckWidth).toEqual({ text: 'see note', um: null });
  });
});
