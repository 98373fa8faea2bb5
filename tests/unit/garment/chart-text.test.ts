import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { type ChartReads, MOST_CHART_CHARACTERS } from '@/lib/domain/garment/chart-text/chart-reading';
import { checkedChart } from '@/lib/domain/garment/chart-text/checked-chart';
import { readChartText } from '@/lib/domain/garment/chart-text/read-chart-text';
import { chartCsv } from '@/lib/domain/garment/chart-text/write-chart-csv';
import { GARMENT_KINDS, kindMeasures } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { type LengthUnit, umFromInches, umFromMm } from '@/lib/domain/measure/length';
import teagan from '../../data/freesewing-teagan-tee-dimensions.json';

const UNITS: readonly LengthUnit[] = ['in', 'cm'];

function read(text: string, reads: Partial<ChartReads> = {}) {
  const reading = readChartText(text, { kind: 'crewTee', unit: 'auto', ...reads });
  if (!reading.ok) throw new Error(`not read: ${reading.reason}`);
  return reading;
}

function codes(text: string, reads: Partial<ChartReads> = {}) {
  return read(text, reads).faults.map(({ code, row, column, found }) => [code, row, column, found]);
}

const inches = (measures: Record<string, number>) =>
  Object.fromEntries(Object.entries(measures).map(([name, value]) => [name, umFromInches(value)]));

describe('a chart with sizes across', () => {
  const text = [
    'Crew tee, all sizes in inches',
    '',
    'Size\tS\tM\tL',
    'Body length (from high point of shoulder)\t27 1/2\t28½\t29.5"',
    'Chest (pit to pit)\t18\t20\t22',
    'Sleeve\t8\t8 1/4\t-',
    'Cost\t2.10\t$2,20\t',
    'Tolerance\t1\t1\t1',
    'Wash inside out',
  ].join('\n');

  it('is read with fractions, costs and what stands around it', () => {
    expect(read(text)).toEqual({
      ok: true,
      unit: 'in',
      orientation: 'across',
      sizes: [
        { label: 'S', entered: inches({ bodyLength: 27.5, chestWidth: 18, sleeveLength: 8 }), costMinor: 210 },
        { label: 'M', entered: inches({ bodyLength: 28.5, chestWidth: 20, sleeveLength: 8.25 }), costMinor: 220 },
        { label: 'L', entered: inches({ bodyLength: 29.5, chestWidth: 22 }), costMinor: null },
      ],
      faults: [],
      notes: [{ code: 'toleranceLeftOut', row: 8, column: 1, heading: 'Tolerance' }],
      unknownRows: ['Crew tee, all sizes in inches', 'Wash inside out'],
    });
  });

  it('is the same written down the page', () => {
    const grid = Papa.parse<string[]>(text.split('\n').slice(2, 7).join('\n'), { delimiter: '\t' }).data;
    const turned = (grid[0] ?? []).map((_, column) => grid.map((row) => row[column] ?? ''));
    const down = read(Papa.unparse(turned, { delimiter: '\t' }));
    expect(down.orientation).toBe('down');
    expect(down.sizes).toEqual(read(text).sizes);
  });
});

describe('a chart saved by a spreadsheet that writes decimal commas', () => {
  it('is read past its mark, with semicolons, and centimetres in its headings', () => {
    const reading = read('\uFEFFSize;Length (cm);1/2 Chest, cm\r\nS;70,5;47\r\nM;72;50\r\n');
    expect(reading.sizes.map(({ entered }) => entered)).toEqual([
      { bodyLength: 705_000, chestWidth: 470_000 },
      { bodyLength: 720_000, chestWidth: 500_000 },
    ]);
    expect(reading).toMatchObject({ unit: 'cm', faults: [], notes: [] });
  });
});

describe('cells that cannot be', () => {
  it('are left out one by one, each named where it stands, and the rest is kept', () => {
    const text = [
      'Size,Length (in),Chest (in),Ärmel',
      'S,28,eighteen,8',
      'M,0,20,8',
      'L,-30,22,8',
      'XL,99999999,24,8',
      ',31,26,8',
      'm,1,1,1',
      '2XL,NaN,27,8',
      '3XL,🧵,28,8',
    ].join('\n');
    expect(codes(text)).toEqual([
      ['unknownMeasure', 1, 4, 'Ärmel'],
      ['notALength', 2, 3, 'eighteen'],
      ['zero', 3, 2, '0'],
      ['negative', 4, 2, '-30'],
      ['outOfRange', 5, 2, '99999999'],
      ['noLabel', 6, 1, ''],
      ['repeatedSize', 7, 1, 'm'],
      ['notALength', 8, 2, 'NaN'],
      ['notALength', 9, 2, '🧵'],
    ]);
    expect(read(text).sizes.map(({ label, entered }) => [label, Object.keys(entered)])).toEqual([
      ['S', ['bodyLength']],
      ['M', ['chestWidth']],
      ['L', ['chestWidth']],
      ['XL', ['chestWidth']],
      ['2XL', ['chestWidth']],
      ['3XL', ['chestWidth']],
    ]);
  });

  it('are those in another unit than most of their measure', () => {
    const text = 'Size\tChest\tLength\nS\t18 in\t28 in\nM\t51 cm\t29 in\nL\t22 in\t30 in';
    expect(codes(text)).toEqual([['mixedUnits', 3, 2, '51 cm']]);
  });

  it('are costs that are no amounts', () => {
    expect(codes('Size,Chest (in),Cost\nS,18,free\nM,20,2.155\nL,22,-3')).toEqual([
      ['notACost', 2, 3, 'free'],
      ['notACost', 3, 3, '2.155'],
      ['notACost', 4, 3, '-3'],
    ]);
  });

  it('are sizes beyond the sixtieth', () => {
    const rows = Array.from({ length: 200 }, (_, index) => `N${index},${20 + index / 10}`);
    const reading = read(['Size,Chest (in)', ...rows].join('\n'));
    expect(reading.sizes).toHaveLength(60);
    expect(reading.faults).toMatchObject([{ code: 'tooManySizes', row: 62, found: 'N60' }]);
  });

  it('are a size with nothing under it, which is kept, and a label too long for one', () => {
    const long = 'a size with a label nobody could order by';
    const text = `Size,Chest (in)\nS,\nM,20\n${long},22`;
    expect(codes(text)).toEqual([
      ['emptySize', 2, 1, 'S'],
      ['labelTooLong', 4, 1, long],
    ]);
    expect(read(text).sizes.map(({ label }) => label)).toEqual(['S', 'M']);
  });

  it('are measures of the body, of another kind of garment, and those that stood already', () => {
    expect(codes('Size,S,M\nTo fit chest,36,38\nChest,18,20\nThigh,11,12\nBust,19,21', { unit: 'in' })).toEqual([
      ['bodyMeasure', 2, 1, 'To fit chest'],
      ['measureOfOtherKind', 4, 1, 'Thigh'],
      ['repeatedMeasure', 5, 1, 'Bust'],
    ]);
  });

  it('are lengths that are measured from elsewhere', () => {
    expect(codes('Size,S,M\nChest,18,20\nSleeve length (from centre back),18,19', { unit: 'in' })).toEqual([
      ['unknownMeasure', 3, 1, 'Sleeve length (from centre back)'],
    ]);
  });
});

describe('the unit', () => {
  const bare = (...chest: number[]) =>
    `Size,S,M\nChest,${chest.join(',')}\nLength,${chest.map((x) => x * 1.4).join(',')}`;

  it('is guessed from the size of the numbers, and said to be', () => {
    expect(read(bare(18, 20)).notes).toEqual([{ code: 'unitGuessed', unit: 'in', unsure: false }]);
    expect(read(bare(46, 51)).notes).toEqual([{ code: 'unitGuessed', unit: 'cm', unsure: false }]);
    const mm = read(bare(460, 510));
    expect(mm.notes).toEqual([{ code: 'unitGuessed', unit: 'mm', unsure: false }]);
    expect(mm.sizes[0]?.entered.chestWidth).toBe(umFromMm(460));
  });

  it('is the one the maker chose, unless the chart says another', () => {
    expect(read(bare(18, 20), { unit: 'cm' })).toMatchObject({ unit: 'cm', notes: [] });
    expect(read(`All measures in inches\n${bare(18, 20)}`, { unit: 'cm' })).toMatchObject({
      unit: 'in',
      notes: [{ code: 'unitOfChart', unit: 'in' }],
    });
  });

  it('is guessed right for every starter chart written without it', () => {
    for (const { kind, sizes } of STARTER_CHARTS) {
      for (const unit of UNITS) {
        const csv = chartCsv({ kind, sizes: asStyle(sizes) }, unit).replaceAll(` (${unit})`, '');
        expect(read(csv, { kind }).notes.map((note) => 'unit' in note && note.unit)).toEqual([unit]);
      }
    }
  });
});

describe('a chest given the whole way round', () => {
  it('is halved where the heading says so', () => {
    const reading = read('Size,S\nChest circumference (in),36\nLength,28');
    expect(reading.sizes[0]?.entered.chestWidth).toBe(umFromInches(18));
    expect(reading.notes).toContainEqual({
      code: 'girthHalved',
      measure: 'chestWidth',
      heading: 'Chest circumference (in)',
    });
  });

  it('is asked about where only the numbers say so, and halved on the answer', () => {
    const text = 'Size,S,M\nChest,36,40\nLength,28,29';
    expect(read(text, { unit: 'in' }).notes).toEqual([{ code: 'mayBeGirth', measure: 'chestWidth', heading: 'Chest' }]);
    expect(read(text, { unit: 'in', chestIs: 'girth' }).sizes[0]?.entered.chestWidth).toBe(umFromInches(18));
    expect(read('Size,S,M\nChest,18,20\nLength,28,29', { unit: 'in' }).notes).toEqual([]);
  });

  it('is a waist over both legs of joggers', () => {
    const waist = (heading: string) =>
      read(`Size,S\nOutseam (in),40\nThigh (in),12\n${heading},14`, { kind: 'joggerLeg' }).sizes[0]?.entered.waistWidth;
    expect(waist('Waist (in)')).toBe(umFromInches(7));
    expect(waist('Waist girth (in)')).toBe(umFromInches(3.5));
  });
});

describe('a text that is no chart', () => {
  it('is refused with the reason', () => {
    const reason = (text: string) => {
      const reading = readChartText(text, { kind: 'crewTee', unit: 'auto' });
      return reading.ok ? null : reading.reason;
    };
    expect(reason('')).toBe('empty');
    expect(reason('\uFEFF \n;;\n')).toBe('empty');
    expect(reason('Dear maker, please find the shirts attached.')).toBe('noMeasures');
    expect(reason('Chest\t18\t20')).toBe('noSizes');
    expect(reason('x'.repeat(MOST_CHART_CHARACTERS + 1))).toBe('tooLong');
    expect(reason(',\n'.repeat(MOST_CHART_CHARACTERS / 2 - 10).concat('Chest'))).toBe('tooLong');
  });

  it('never makes reading fail, whatever it is', () => {
    const cell = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom('Size', 'Chest', 'Length (cm)', 'S', 'M', '27 1/2', '-1', '0', '1e9', '"', "'=1+1", '±1', ''),
    );
    const grid = fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 8 });
    fc.assert(
      fc.property(grid, fc.constantFrom('\t', ',', ';', '|'), fc.constantFrom(...GARMENT_KINDS), (rows, sign, kind) => {
        const reading = readChartText(rows.map((row) => row.join(sign)).join('\n'), { kind, unit: 'auto' });
        if (!reading.ok) return;
        for (const { entered, label } of reading.sizes) {
          expect(label).not.toBe('');
          for (const um of Object.values(entered)) expect(um > 0 && Number.isInteger(um)).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});

function asStyle(sizes: (typeof STARTER_CHARTS)[number]['sizes']) {
  return sizes.map(({ id, label, entered }, index) => ({ sizeId: id, label, entered, costMinor: 150 + index }));
}

// RFC 4180: quoted cells with doubled quotes, CRLF between lines, the same number of cells on each.
describe('a chart written as CSV', () => {
  it('reads back to the same sizes for every starter chart, in either unit', () => {
    for (const { kind, sizes } of STARTER_CHARTS) {
      for (const unit of UNITS) {
        const reading = read(chartCsv({ kind, sizes: asStyle(sizes) }, unit), { kind });
        expect(reading.sizes).toEqual(asStyle(sizes).map(({ sizeId: _, ...size }) => size));
        expect(reading).toMatchObject({ faults: [], notes: [], unknownRows: [], unit });
      }
    }
  });

  it('reads back any measure of any kind to the micrometre', () => {
    const anyChart = fc.constantFrom(...GARMENT_KINDS).chain((kind) =>
      fc.record({
        kind: fc.constant(kind),
        unit: fc.constantFrom(...UNITS),
        entered: fc.record(
          Object.fromEntries(kindMeasures(kind).map((name) => [name, fc.integer({ min: 1_000, max: 1_500_000 })])),
        ),
      }),
    );
    fc.assert(
      fc.property(anyChart, ({ kind, unit, entered }) => {
        const sizes = [{ sizeId: 'a', label: 'M', entered, costMinor: null }];
        expect(read(chartCsv({ kind, sizes }, unit), { kind }).sizes).toEqual([
          { label: 'M', entered, costMinor: null },
        ]);
      }),
    );
  });

  it('keeps labels a spreadsheet would run as formulas from running, and reads them back', () => {
    const labels = ['=1+1', '+S', '-M', '@L', "'=x", 'a,"b"', '2XL', '½'];
    const sizes = labels.map((label, index) => ({
      sizeId: label,
      label,
      entered: { chestWidth: umFromInches(18 + index) },
      costMinor: null,
    }));
    const csv = chartCsv({ kind: 'crewTee', sizes }, 'in');
    expect(csv).not.toMatch(/(^|\r\n|,)[=+\-@]/);
    expect(csv.endsWith('\r\n')).toBe(true);
    expect(read(csv).sizes.map(({ label }) => label)).toEqual(labels);
  });
});

// Finished measures published for a tee: freesewing teagan, see tests/data/SOURCES.md.
describe('a published table of finished measures, pasted', () => {
  it('gives the figures of the table', () => {
    const men = teagan.rows.filter(({ model }) => model.startsWith('cisMaleAdult'));
    const line = (heading: string, name: keyof (typeof men)[number]['garment_mm']) =>
      [heading, ...men.map(({ garment_mm }) => garment_mm[name])].join('\t');
    const text = [
      ['Size (mm)', ...men.map(({ model }) => model.replace(/\D/g, ''))].join('\t'),
      line('Half chest', 'chestWidthFlat'),
      line('Length from HPS', 'bodyLengthHpsToHem'),
      line('Shoulder to shoulder', 'shoulderWidth'),
      line('Neck width', 'neckWidthHpsToHps'),
      line('Front neck drop', 'frontNeckDropFromHps'),
      line('Sleeve opening', 'sleeveHemWidthFlat'),
    ].join('\n');
    const reading = read(text);
    expect(reading.faults).toEqual([]);
    expect(men.length).toBeGreaterThan(3);
    expect(reading.sizes.map(({ entered }) => entered)).toEqual(
      men.map(({ garment_mm: mm }) => ({
        chestWidth: umFromMm(mm.chestWidthFlat),
        bodyLength: umFromMm(mm.bodyLengthHpsToHem),
        acrossShoulder: umFromMm(mm.shoulderWidth),
        neckWidth: umFromMm(mm.neckWidthHpsToHps),
        frontNeckDrop: umFromMm(mm.frontNeckDropFromHps),
        sleeveOpening: umFromMm(mm.sleeveHemWidthFlat),
      })),
    );
  });
});

describe('looking a chart through', () => {
  it('names the size that cannot be and the step that shrinks', () => {
    const size = (sizeId: string, chest: number, length: number) => ({
      sizeId,
      entered: inches({ chestWidth: chest, bodyLength: length, sleeveLength: 8 }),
    });
    expect(checkedChart('crewTee', [size('S', 18, 28), size('M', 20, 29)])).toEqual({
      sound: true,
      refusals: [],
      steps: [],
    });
    expect(checkedChart('crewTee', [size('S', 18, 28), size('M', 5, 40)])).toMatchObject({
      sound: false,
      refusals: [{ sizeId: 'M', refusal: { reason: 'tooLongForWidth', measure: 'bodyLength' } }],
      steps: [{ sizeId: 'M', afterSizeId: 'S', measure: 'chestWidth' }],
    });
  });
});
