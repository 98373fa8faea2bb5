import Papa from 'papaparse';
import type { GarmentKind } from '../kinds';
import { readHeading } from './measure-headings';

/** The cells of a text as a spreadsheet would hold them, tidied; rows may be of different lengths. */
export type ChartGrid = readonly (readonly string[])[];

/** Most cells a chart may span: sixty sizes of forty measures, with seven times as many for whatever stands around. */
const MOST_CELLS = 20_000;

/** What parts the cells of a line, the surest sign first: a comma may be that of a decimal number. */
const DELIMITERS = ['\t', ';', '|', ','] as const;
/** What parts them in a table copied from a letter or a leaflet, where nothing else does. */
const WIDE_GAP = / {2,}/g;

/** A text that a spreadsheet would run as a formula is written with an apostrophe before it; it is no part of the text. */
const GUARDED = /^'(?=[=+\-@\t\r\n＝＋－＠'])/;

/**
 * The text of a pasted block or a CSV file as rows of cells, taken apart so that most of its headings name measures. Row and
 * column keep the numbers a spreadsheet gives them; blank rows and columns at the end are left out. Null when it spans more
 * cells than any chart does.
 */
export function chartGrid(text: string, kind: GarmentKind): ChartGrid | null {
  const marked = text.replace(/^\uFEFF/, '');
  const lines = marked.split(/\r\n|\r|\n/).filter((line) => line.trim() !== '');
  const isUsual = (holds: (line: string) => boolean) => lines.filter(holds).length * 2 >= lines.length;
  const signs = DELIMITERS.filter((sign) => isUsual((line) => line.includes(sign)));
  if (signs.length === 0 && isUsual((line) => /\S {2,}\S/.test(line)))
    return gridOf(cellsOf(marked.replace(WIDE_GAP, '\t'), '\t'));
  const grids = (signs.length === 0 ? [','] : signs).map((sign) => gridOf(cellsOf(marked, sign)));
  if (grids.length === 1) return grids[0] ?? null;
  const fitting = grids.filter((grid) => grid !== null).map((grid) => ({ grid, named: namedMeasures(grid, kind) }));
  return fitting.toSorted((a, b) => b.named - a.named)[0]?.grid ?? null;
}

function gridOf(cells: readonly string[][]): ChartGrid | null {
  const rows = cells.map((row) =>
    withoutTail(
      row.map((cell) => tidyCell(cell)),
      (cell) => cell === '',
    ),
  );
  const grid = withoutTail(rows, (row) => row.length === 0);
  const width = grid.reduce((most, row) => Math.max(most, row.length), 0);
  return grid.length * width > MOST_CELLS ? null : grid;
}

function namedMeasures(grid: ChartGrid, kind: GarmentKind): number {
  return grid.flat().filter((cell) => readHeading(cell, kind)?.is === 'measure').length;
}

/**
 * Quotes that do not pair up, or hold a tab where tabs part the cells, are inch marks or part of a remark: then none of them
 * holds a cell together.
 */
function cellsOf(text: string, delimiter: string): string[][] {
  const quoted = Papa.parse<string[]>(text, { delimiter });
  const isPaired = !quoted.errors.some(({ type }) => type === 'Quotes');
  if (isPaired && !(delimiter === '\t' && quoted.data.flat().some((cell) => cell.includes('\t')))) return quoted.data;
  return Papa.parse<string[]>(text, { delimiter, fastMode: true }).data;
}

function withoutTail<Each>(all: readonly Each[], isBlank: (each: Each) => boolean): readonly Each[] {
  return all.slice(0, all.findLastIndex((each) => !isBlank(each)) + 1);
}

function tidyCell(cell: string): string {
  return cell
    .replace(/[\u00A0\u2000-\u200A\u202F\u3000]/g, ' ')
    .replace(/[\u200B\uFEFF]/g, '')
    .trim()
    .replace(GUARDED, '')
    .replace(/\s+/g, ' ');
}
