import Papa from 'papaparse';
import { cleanPasted, folded } from '../clean-field';
import { type GarmentOnOffer, sizePlace } from '../list';
import type { Column, ColumnKind } from '../person';
import { readSize } from '../read-size';
import type { ColumnUse, PastedTable } from './pasted';

const DELIMITERS = ['\t', ';', '|', ','] as const;
/** A text a spreadsheet would run as a formula is written with an apostrophe before it; it is no part of the text. */
const GUARDED = /^'(?=[=+\-@\t\r\n＝＋－＠'])/u;

/** What a heading calls a column (common practice, no source). */
const HEADINGS: readonly { readonly kind: ColumnKind | 'size' | 'quantity' | 'leave'; readonly names: RegExp }[] = [
  {
    kind: 'name',
    names:
      /^(?:(?:full |first |last |player |runner |student |shirt |print )?names?|player|runner|student|who|surname|nickname|name on (?:shirt|back))$/u,
  },
  { kind: 'number', names: /^(?:(?:player |jersey |shirt |back |seat )?(?:number|numbers|no|num|nr|#)|seat|jersey)$/u },
  { kind: 'size', names: /^(?:.*\bsizes?|sz|garment|shirt|tee|t-shirt|hood|hoodie)$/u },
  { kind: 'quantity', names: /^(?:qty|quantity|count|how many|pcs|pieces|x)$/u },
  { kind: 'group', names: /^(?:team|squad|class|group|boat|crew|section|grade|house|unit|form)$/u },
  { kind: 'year', names: /^(?:year|grad(?:uation)?(?: year)?|class of)$/u },
  { kind: 'leave', names: /^(?:line|row|#line)$/u },
];

/**
 * The cells of a pasted block or a CSV file, and its headings where the first line names columns. Null where nothing parts
 * the text into columns: then it is a message.
 */
export function pastedTable(
  text: string,
  columns: readonly Column[],
  garments: readonly GarmentOnOffer[],
): PastedTable | null {
  const marked = text.replace(/^\uFEFF/u, '');
  const grid = tabled(marked);
  if (!grid) return null;
  const [first = [], ...rest] = grid;
  const named = first.filter((cell) => isHeading(cell, columns, garments)).length;
  const isHead = named > 0 && named * 2 >= first.filter((cell) => cell !== '').length;
  return isHead ? { rows: rest, headings: first } : { rows: grid, headings: null };
}

/** What each column of a pasted table is most likely meant for: by its heading, otherwise by what stands in it. */
export function guessUses(
  { rows, headings }: PastedTable,
  columns: readonly Column[],
  garments: readonly GarmentOnOffer[],
): ColumnUse[] {
  const width = Math.max(headings?.length ?? 0, ...rows.map((row) => row.length));
  const uses: ColumnUse[] = [];
  for (let at = 0; at < width; at += 1) {
    const cells = rows.map((row) => row[at] ?? '').filter((cell) => cell !== '');
    const heading = headings?.[at] ?? null;
    const guess = heading
      ? meaningOfHeading(heading, cells, columns, garments)
      : meaningOfCells(cells, columns, garments);
    uses.push(isTaken(guess, uses) ? anotherUse(guess, heading, uses, garments) : guess);
  }
  return uses;
}

function tabled(text: string): string[][] | null {
  const lines = text.split(/\r\n|\r|\n/u).filter((line) => line.trim() !== '');
  const delimiter = DELIMITERS.find((sign) => lines.filter((line) => line.includes(sign)).length * 2 >= lines.length);
  if (!delimiter) return null;
  // `Mia 7 youth M, Bob XL 22` is a message: such a sign parts columns only where every line has as many of them.
  if (delimiter !== '\t' && !isEven(lines.length, text, delimiter)) return null;
  const quoted = Papa.parse<string[]>(text, { delimiter });
  const data = quoted.errors.some(({ type }) => type === 'Quotes')
    ? Papa.parse<string[]>(text, { delimiter, fastMode: true }).data
    : quoted.data;
  const rows = data.map((row) => row.map((cell) => cleanPasted(cell).replace(GUARDED, '')));
  return rows.filter((row) => row.some((cell) => cell !== ''));
}

function isEven(lines: number, text: string, delimiter: string): boolean {
  const rows = Papa.parse<string[]>(text, { delimiter, skipEmptyLines: true }).data;
  const [first] = rows;
  if (!first || first.length < 2 || lines < 2) return false;
  return rows.filter((row) => row.length === first.length).length * 10 >= rows.length * 9;
}

function plainHeading(text: string): string {
  return folded(text)
    .replace(/[:.*]+$/u, '')
    .trim();
}

function isHeading(cell: string, columns: readonly Column[], garments: readonly GarmentOnOffer[]): boolean {
  const heading = plainHeading(cell);
  return (
    columns.some(({ name }) => folded(name) === heading) ||
    garments.some(({ name }) => folded(name) === heading) ||
    HEADINGS.some(({ names }) => names.test(heading))
  );
}

function meaningOfHeading(
  text: string,
  cells: readonly string[],
  columns: readonly Column[],
  garments: readonly GarmentOnOffer[],
): ColumnUse {
  const heading = plainHeading(text);
  const own = columns.find(({ name }) => folded(name) === heading);
  if (own) return { use: 'field', columnId: own.columnId };
  const garment = garments.find(({ name }) => heading.includes(folded(name)));
  if (garment) return { use: 'size', garmentId: garment.garmentId };
  const kind = HEADINGS.find(({ names }) => names.test(heading))?.kind;
  if (kind === 'size') return forSizes(garments);
  if (kind === 'quantity' || kind === 'leave') return { use: kind };
  if (kind === undefined && isMostly(cells, (cell) => isSize(cell, garments))) return forSizes(garments);
  const same = columns.find((column) => column.kind === kind && (kind === 'name' || kind === 'number'));
  return same ? { use: 'field', columnId: same.columnId } : { use: 'newField', name: text, kind: kind ?? 'text' };
}

function meaningOfCells(
  cells: readonly string[],
  columns: readonly Column[],
  garments: readonly GarmentOnOffer[],
): ColumnUse {
  if (cells.length === 0) return { use: 'leave' };
  if (isMostly(cells, (cell) => isSize(cell, garments))) return forSizes(garments);
  const kind = isMostly(cells, (cell) => /^#?\d{1,3}$/u.test(cell)) ? 'number' : 'name';
  const own = columns.find((column) => column.kind === kind);
  return own ? { use: 'field', columnId: own.columnId } : { use: 'leave' };
}

/** A column that something earlier is already meant for is one of its own: a second name, another garment's size. */
function anotherUse(
  guess: ColumnUse,
  heading: string | null,
  before: readonly ColumnUse[],
  garments: readonly GarmentOnOffer[],
): ColumnUse {
  if (guess.use === 'size') {
    const free = garments.find(({ garmentId }) => !isTaken({ use: 'size', garmentId }, before));
    return free ? { use: 'size', garmentId: free.garmentId } : { use: 'leave' };
  }
  return heading ? { use: 'newField', name: heading, kind: 'text' } : { use: 'leave' };
}

function isTaken(use: ColumnUse, before: readonly ColumnUse[]): boolean {
  const of = placeOfUse(use);
  return of !== null && before.some((each) => placeOfUse(each) === of);
}

function placeOfUse(use: ColumnUse): string | null {
  if (use.use === 'field') return use.columnId;
  if (use.use === 'size') return sizePlace(use.garmentId);
  return use.use === 'quantity' ? 'quantity' : null;
}

function forSizes(garments: readonly GarmentOnOffer[]): ColumnUse {
  const [first] = garments;
  return first ? { use: 'size', garmentId: first.garmentId } : { use: 'leave' };
}

function isSize(cell: string, garments: readonly GarmentOnOffer[]): boolean {
  return garments.some(({ sizes }) => {
    const read = readSize(cell, sizes);
    return read.ok || read.reason !== 'unknown';
  });
}

function isMostly(cells: readonly string[], holds: (cell: string) => boolean): boolean {
  return cells.length > 0 && cells.filter(holds).length * 5 >= cells.length * 3;
}
