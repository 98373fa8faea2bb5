import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { ChartReads } from '@/lib/domain/garment/chart-text/chart-reading';
import { readHeading } from '@/lib/domain/garment/chart-text/measure-headings';
import { readChartText } from '@/lib/domain/garment/chart-text/read-chart-text';
import { chartCsv } from '@/lib/domain/garment/chart-text/write-chart-csv';
import { GARMENT_KINDS } from '@/lib/domain/garment/kinds';
import { STARTER_CHARTS } from '@/lib/domain/garment/starter-charts';
import { umFromInches, umFromMm } from '@/lib/domain/measure/length';
import teagan from '../../data/freesewing-teagan-tee-dimensions.json';

// How suppliers lay out their charts: common practice, from memory, no source.

function read(text: string, reads: Partial<ChartReads> = {}) {
  const reading = readChartText(text, { kind: 'crewTee', unit: 'auto', ...reads });
  if (!reading.ok) throw new Error(`not read: ${reading.reason}`);
  return reading;
}

/** Lines of cells as a spreadsheet puts them on the clipboard. */
function pasted(...rows: string[]): string {
  return rows.map((row) => row.split('|').join('\t')).join('\n');
}

/** Chest and length of each size, inches. */
function inInches(text: string, reads: Partial<ChartReads> = {}) {
  const of = (um: number | undefined) => (um === undefined ? null : um / umFromInches(1));
  return read(text, reads).sizes.map(({ label, entered }) => [label, of(entered.chestWidth), of(entered.bodyLength)]);
}

const PLAIN = [
  ['S', 18, 28],
  ['M', 20, 29],
];

describe('a chart as a supplier lays it out', () => {
  it.each([
    ['letters into a drawing', pasted('Size|S|M', 'Chest (A)|18|20', 'Length (B)|28|29')],
    ['letters of their own column', pasted('Code|Measure|S|M', 'A|Chest 1" below armhole|18|20', 'B|Length HPS|28|29')],
    ['a column of units', pasted('Size|Unit|S|M', 'Chest|in|18|20', 'Length|in|28|29')],
    ['a row of units', pasted('Size|Chest|Length', '|inches|inches', 'S|18|28', 'M|20|29')],
    ['a column of tolerances', pasted('|Tol +/-|S|M|+/-', 'Chest|1/2|18|20|± 1', 'Length|1/2|28|29|± 1')],
    ['blank rows and columns', pasted('|||', '|Size||S|M|', '||||', '|Chest||18|20|', '|Length||28|29|', '|||')],
    ['nobody’s measure above the first', pasted('Size|S|M', 'Zing|1|2', 'Chest|18|20', 'Length|28|29')],
    ['nobody’s measure and no word for sizes', pasted('|S|M', 'Zing|1|2', 'Chest|18|20', 'Length|28|29')],
    ['cells with line breaks', 'Size,"Chest\n(in)","Length\r\n(in)"\r\nS,18,28\r\nM,20,29'],
    ['inch marks in quotes', 'Size,Chest,Length\nS,"18""","28"""\nM,"20""","29"""'],
    ['a quote that is never closed', pasted('"Heavy tee, 6 oz', 'Size|S|M', 'Chest|18|20', 'Length|28|29')],
    ['an inch mark before the labels', pasted('" inches|S|M', 'Chest|18"|20"', 'Length|28"|29"')],
    ['wide gaps, as copied from a leaflet', 'Size      S     M\nChest     18    20\nLength    28    29'],
    [
      'a thousand blank rows below',
      `Size,Chest (in),Length (in)\nS,18,28\nM,20,29\n${`${','.repeat(25)}\n`.repeat(998)}`,
    ],
    ['every word for inches', pasted('Size|Chest|Length', "S|18''|28 inches", 'M|20 ins|29 in.')],
    ['metric words', pasted('Size|Chest|Length', 'S|45.72 cms|711.2 millimetres', 'M|50.8 centimeters|736.6mm')],
  ])('is read: %s', (_, text) => {
    expect(inInches(text)).toEqual(PLAIN);
  });

  it('keeps numbers as labels of sizes', () => {
    expect(inInches(pasted('|4|6', 'Chest|14|15', 'Length|18|19'), { unit: 'in' })).toEqual([
      ['4', 14, 18],
      ['6', 15, 19],
    ]);
  });

  it('takes blocks one under the other, and tells what stands between them', () => {
    const text = pasted('Adult', 'Size|Chest|Length', 'S|18|28', '', 'Youth', 'Size|Chest|Length', 'YS|17|22');
    expect(inInches(text)).toEqual([
      ['S', 18, 28],
      ['YS', 17, 22],
    ]);
    expect(read(text)).toMatchObject({ faults: [], unknownRows: ['Adult', 'Youth', 'Size Chest Length'] });
  });

  it('loses no column without saying so', () => {
    expect(read(pasted('Size|Chest|Notes', 'S|18|runs small', 'M|20|')).unknownRows).toEqual(['Notes']);
    const across = read(pasted('Size|S|M|Notes', 'Chest|18|20|runs small'));
    expect(across.unknownRows).toEqual(['Notes']);
    expect(across.sizes.map(({ label }) => label)).toEqual(['S', 'M']);
  });

  it('has a size that gives nothing where its label is that of a size', () => {
    const codes = (label: string) =>
      read(`Size,Chest (in)\nS,18\n${label},\nL,22`).faults.map(({ code, row }) => [code, row]);
    for (const label of ['M', '2XL', 'XXL', 'YM', 'XLT', '3-4 yrs', '18M', 'Youth Large', 'One size', '5/6'])
      expect(codes(label), label).toEqual([['emptySize', 3]]);
    for (const label of ['Youth', 'Wash inside out', 'Adults']) expect(codes(label), label).toEqual([]);
  });
});

describe('a unit', () => {
  it('is not taken from a length that is mentioned, nor from a row of other numbers', () => {
    const chart = ['Size|S|M', 'Chest|18|20', 'Length|28|29'];
    const guessed = [{ code: 'unitGuessed', unit: 'in', unsure: false }];
    expect(read(pasted(...chart, 'A tolerance of 2 cm applies'))).toMatchObject({ unit: 'in', notes: guessed });
    expect(read(pasted(...chart, 'To fit chest (cm)|91/96|96/101'))).toMatchObject({ unit: 'in', notes: guessed });
    expect(read(pasted('Given in inches or cm', ...chart))).toMatchObject({ unit: 'in', notes: guessed });
  });

  it('that a number has by its size alone sets the number apart', () => {
    const faults = (...rows: string[]) =>
      read(pasted(...rows)).faults.map(({ code, row, column, found }) => [code, row, column, found]);
    expect(faults('Size|S|M|L|XL', 'Chest|18|51|22|24', 'Length|28|29|30|31')).toEqual([['mixedUnits', 2, 3, '51']]);
    expect(faults('Size|S|M|L|XL', 'Chest cm|46|510|56|61', 'Length cm|71|74|76|79')).toEqual([
      ['mixedUnits', 2, 3, '510'],
    ]);
    expect(faults('Size|2T|S|5XL', 'Chest (in)|12|18|32', 'Length (in)|15.5|28|35')).toEqual([]);
  });

  it('is not divided into: two numbers with a stroke are no fraction', () => {
    expect(read(pasted('Size|S|M', 'Chest (in)|18/46|20 1/2', 'Length (in)|28|29')).faults).toMatchObject([
      { code: 'notALength', row: 2, column: 2, found: '18/46' },
    ]);
  });
});

describe('a cost', () => {
  it('may have the sign of its currency, thousands and either decimal sign', () => {
    const cells = ['£4.25', '4,25 €', 'US$ 4.25', '$1,234.50', '1 234,50', '4.25 USD', '4', 'kr 5,5'];
    const text = pasted('Size|Chest (in)|Cost (USD)', ...cells.map((cell, index) => `N${index}|${18 + index}|${cell}`));
    expect(read(text).faults).toEqual([]);
    expect(read(text).sizes.map(({ costMinor }) => costMinor)).toEqual([425, 425, 425, 123450, 123450, 425, 400, 550]);
    expect(read(pasted('Size|Chest (in)|Price', 'S|18|1,234')).faults).toMatchObject([{ code: 'notACost' }]);
  });
});

describe('a chest without a length beside it', () => {
  it('is asked about where no garment of the kind is so wide', () => {
    const codes = (chest: string) => read(`Size,S,M,L\nChest (in),${chest}`).notes.map(({ code }) => code);
    expect(codes('38,42,46')).toEqual(['mayBeGirth']);
    expect(codes('18,20,22')).toEqual([]);
  });
});

describe('a heading', () => {
  it.each([
    'Chest Width (PTP)',
    'Pit-to-pit',
    'Chest, laid flat',
    '1/2 Chest Width',
    '½ chest',
    'Half-chest',
    'A. Body width',
    'Chest / Bust',
    'Chest 2.5 cm below armhole',
    'CHEST WIDTH – IN',
    'Finished chest width*',
  ])('means the width of the chest: %s', (heading) => {
    expect(readHeading(heading, 'crewTee')).toMatchObject({ is: 'measure', measure: 'chestWidth', share: 1 });
  });

  it.each(['Chest girth', 'Chest circumference (cm)', 'Chest all round', 'Bust, around'])(
    'means the whole way round: %s',
    (heading) => {
      expect(readHeading(heading, 'crewTee')).toMatchObject({ measure: 'chestWidth', share: 0.5, reach: 'girth' });
    },
  );

  it.each(['Centre back length', 'Sleeve from centre back', 'Full chest', 'Armhole depth', 'constructor', '__proto__'])(
    'is not guessed at: %s',
    (heading) => {
      expect(readHeading(heading, 'crewTee')).toBeNull();
    },
  );

  it('of height means that of the wearer on a top and that of the cloth on a bag', () => {
    expect(readHeading('Height', 'crewTee')).toEqual({ is: 'body' });
    expect(readHeading('Height', 'tote')).toMatchObject({ measure: 'panelHeight' });
  });
});

describe('a text that was never meant for a chart', () => {
  it('is refused before it is looked at when it is ten megabytes, and when it spans a field of cells', () => {
    const reason = (text: string) => {
      const reading = readChartText(text, { kind: 'crewTee', unit: 'auto' });
      return reading.ok ? null : reading.reason;
    };
    expect(reason('x,y;z\t1\n'.repeat(1_310_720))).toBe('tooLong');
    expect(reason(`Size${',S'.repeat(4_000)}\n${'Chest,1\n'.repeat(4_000)}`)).toBe('tooLong');
  });

  it('never makes reading fail', () => {
    const anyText = fc.oneof(fc.string({ unit: 'binary', maxLength: 300 }), fc.string({ unit: 'grapheme' }));
    const nearly = fc
      .array(
        fc.constantFrom('Size', 'Chest', 'cm', '"', "'", '\t', ',', ';', '\n', '\r', '1/0', '½', '\uFEFF', '=', ' '),
      )
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(fc.oneof(anyText, nearly), fc.constantFrom(...GARMENT_KINDS), (text, kind) => {
        const reading = readChartText(text, { kind, unit: 'auto' });
        if (!reading.ok) return;
        for (const { row, column } of reading.faults) expect(Math.min(row, column)).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });
});

describe('a chart written as CSV', () => {
  const written = STARTER_CHARTS.flatMap(({ kind, sizes }) =>
    (['in', 'cm'] as const).map((unit) => {
      const style = sizes.map(({ id, label, entered }) => ({ sizeId: id, label, entered, costMinor: 399 }));
      return { kind, unit, style, csv: chartCsv({ kind, sizes: style }, unit) };
    }),
  );

  it('reads back to the same sizes when somebody turns it, for every starter chart in either unit', () => {
    for (const { kind, unit, style, csv } of written) {
      const down = Papa.parse<string[]>(csv.replace('\uFEFF', ''), { skipEmptyLines: true }).data;
      const across = (down[0] ?? []).map((_, column) => down.map((row) => row[column] ?? ''));
      const reading = read(Papa.unparse(across, { delimiter: '\t' }), { kind });
      expect(reading.sizes).toEqual(style.map(({ sizeId: _, ...size }) => size));
      expect(reading).toMatchObject({ orientation: 'across', unit, faults: [], notes: [], unknownRows: [] });
    }
  });

  // RFC 4180 section 2, as a pattern: a field is quoted with its quotes doubled or holds none of `"`, `,`, CR and LF.
  it('is one by the grammar of RFC 4180, with the same number of fields on each line', () => {
    const field = '(?:"(?:[^"]|"")*"|[^",\\r\\n]*)';
    const awkward = ['a,b', 'say "XL"', '=1+1', 'two\nlines', '\n=1+1', '＝1', ' S', '½'];
    const sizes = awkward.map((label) => ({ sizeId: label, label, entered: { chestWidth: 457_200 }, costMinor: null }));
    for (const csv of [...written.map((each) => each.csv), chartCsv({ kind: 'crewTee', sizes }, 'cm')]) {
      const fields = csv.split('\r\n')[0]?.split(',').length ?? 0;
      expect(csv.slice(1)).toMatch(new RegExp(`^(?:${field}(?:,${field}){${fields - 1}}\\r\\n)+$`));
    }
    // Formulas a spreadsheet would run, full-width signs among them: OWASP, CSV injection (from memory).
    expect(chartCsv({ kind: 'crewTee', sizes }, 'cm')).not.toMatch(/(^|\r\n|,)"?[\n=+\-@＝＋－＠]/);
  });

  it('reads back any label to the letter, but for white space', () => {
    const label = fc
      .string({ minLength: 1, maxLength: 30, unit: 'grapheme' })
      .map((text) => text.replace(/\s+/g, ' ').trim())
      .filter((text) => text !== '' && text.length <= 30 && readHeading(text, 'crewTee') === null);
    fc.assert(
      fc.property(label, (text) => {
        const sizes = [{ sizeId: 'a', label: text, entered: { chestWidth: 457_200 }, costMinor: null }];
        expect(read(chartCsv({ kind: 'crewTee', sizes }, 'in')).sizes.map((size) => size.label)).toEqual([text]);
      }),
      { numRuns: 300 },
    );
  });
});

// Finished measures published for a tee: freesewing teagan, see tests/data/SOURCES.md.
describe('a published table of finished measures, saved with decimal commas', () => {
  it('gives the figures of the table, a row a size', () => {
    const women = teagan.rows.filter(({ model }) => model.startsWith('cisFemaleAdult'));
    expect(women.length).toBeGreaterThan(3);
    const cm = (mm: number) => String(mm / 10).replace('.', ',');
    const text = [
      'Size;Pit to pit;Length HPS;Hem;Neck drop back',
      ...women.map(({ model, garment_mm: mm }) =>
        [model.replace(/\D/g, ''), mm.chestWidthFlat, mm.bodyLengthHpsToHem, mm.hemWidthFlat, mm.backNeckDropFromHps]
          .map((value) => (typeof value === 'number' ? cm(value) : value))
          .join(';'),
      ),
    ].join('\r\n');
    const reading = read(`\uFEFF${text}`);
    expect(reading).toMatchObject({ orientation: 'down', unit: 'cm', faults: [] });
    expect(reading.notes).toEqual([{ code: 'unitGuessed', unit: 'cm', unsure: false }]);
    expect(reading.sizes.map(({ entered }) => entered)).toEqual(
      women.map(({ garment_mm: mm }) => ({
        chestWidth: umFromMm(mm.chestWidthFlat),
        bodyLength: umFromMm(mm.bodyLengthHpsToHem),
        hemWidth: umFromMm(mm.hemWidthFlat),
        backNeckDrop: umFromMm(mm.backNeckDropFromHps),
      })),
    );
  });
});
