import Papa from 'papaparse';

/** The cells of a text as a spreadsheet would hold them, tidied; rows may be of different lengths. */
export type ChartGrid = readonly (readonly string[])[];

/** Most cells of a chart that are looked at: sixty sizes of forty measures, with as many again for whatever stands around. */
const MOST_CELLS = 10_000;

/** What parts the cells of a line, the surest sign first: a comma may be that of a decimal number. */
const DELIMITERS = ['\t', ';', '|', ','] as const;

/** A text that a spreadsheet would run as a formula is written with an apostrophe before it; it is no part of the text. */
const GUARDED = /^'(?=[=+\-@\t\r'])/;

/**
 * The text of a pasted block or a CSV file as rows of cells. Row and column keep the numbers a spreadsheet gives them. Null
 * when there are more cells than any chart has.
 */
export function chartGrid(text: string): ChartGrid | null {
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), {
    delimiter: delimiterOf(text),
    skipEmptyLines: false,
    preview: MOST_CELLS,
  });
  const cells = data.reduce((sum, row) => sum + row.length, 0);
  return cells > MOST_CELLS ? null : data.map((row) => row.map(tidyCell));
}

/** The first sign that stands in half of the lines that hold anything. */
function delimiterOf(text: string): string {
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== '');
  const isUsual = (sign: string) => lines.filter((line) => line.includes(sign)).length * 2 >= lines.length;
  return DELIMITERS.find(isUsual) ?? ',';
}

function tidyCell(cell: string): string {
  return cell
    .replace(/[\u00A0\u2000-\u200A\u202F\u3000]/g, ' ')
    .replace(/[\u200B\uFEFF]/g, '')
    .trim()
    .replace(GUARDED, '')
    .replace(/\s+/g, ' ');
}
