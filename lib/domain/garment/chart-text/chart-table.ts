import type { GarmentKind } from '../kinds';
import type { ChartGrid } from './chart-grid';
import { unitAlone } from './chart-unit';
import { type Heading, readHeading } from './measure-headings';
import { holdsLength } from './read-cell';

/** Where a cell stands in the text, from 1. */
export type CellPlace = { readonly row: number; readonly column: number };

/** A chart turned so that every measure is a line and every size a place on it, whichever way it was written. */
export type ChartTable = {
  readonly orientation: 'across' | 'down';
  /** Line by line: what stands before the line, what that means, and what stands at each size. */
  readonly lines: readonly { readonly index: number; readonly heading: string; readonly means: Heading | null }[];
  /** What stands in the corner before the labels, such as `Size (cm)`. */
  readonly corner: string;
  /** Where the sizes stand, in the order of the text, with their labels. */
  readonly sizes: readonly { readonly index: number; readonly label: string }[];
  /** Where the chart gives each line its unit in a cell of its own; null where it does not. */
  readonly unitPlace: number | null;
  readonly cell: (line: number, size: number) => string;
  readonly placeOf: (line: number, size: number) => CellPlace;
  /** Line of the labels, place of the headings. */
  readonly labelLine: number;
  readonly headingPlace: number;
};

/**
 * Finds measures and sizes in a grid: measures stand in the row or the column that names most of them, labels beside or
 * above the first of them.
 */
export function chartTable(grid: ChartGrid, kind: GarmentKind): ChartTable | 'noMeasures' | 'noSizes' {
  const down = turned(grid);
  const [inColumn, inRow] = [bestHeadings(down, kind), bestHeadings(grid, kind)];
  if (!(inColumn && inRow)) return 'noMeasures';
  const isAcross =
    inColumn.count === inRow.count
      ? lengthsAfter(grid, inColumn) >= lengthsAfter(down, inRow)
      : inColumn.count > inRow.count;
  return isAcross ? tableOf(grid, kind, inColumn, 'across') : tableOf(down, kind, inRow, 'down');
}

type Headings = { readonly place: number; readonly first: number; readonly count: number };

/** Of the rows of a grid, the one that names most measures; `place` is its number, `first` where the first of them stands. */
function bestHeadings(grid: ChartGrid, kind: GarmentKind): Headings | null {
  let best: Headings | null = null;
  grid.forEach((row, place) => {
    const named = row.flatMap((cell, at) => (namesMeasure(cell, kind) ? [at] : []));
    const [first] = named;
    if (first !== undefined && named.length > (best?.count ?? 0)) best = { place, first, count: named.length };
  });
  return best;
}

function namesMeasure(cell: string, kind: GarmentKind): boolean {
  return readHeading(cell, kind)?.is === 'measure';
}

/** How many numbers stand on the line of the first heading, which has its headings at `place`. */
function lengthsAfter(grid: ChartGrid, { place, first }: Headings): number {
  return (grid[first] ?? []).slice(place + 1).filter((cell) => /\d/.test(cell)).length;
}

function tableOf(
  grid: ChartGrid,
  kind: GarmentKind,
  { place, first }: Headings,
  orientation: ChartTable['orientation'],
): ChartTable | 'noSizes' {
  const labelLine = lineOfLabels(grid, kind, place, first);
  if (labelLine === null) return 'noSizes';
  const cell = (line: number, size: number) => grid[line]?.[size] ?? '';
  const width = Math.max(...grid.map((row) => row.length));
  const lines = grid.map((row, index) => {
    const heading = row[place] ?? '';
    return { index, heading, means: readHeading(heading, kind) };
  });
  const sizes = Array.from({ length: Math.max(0, width - place - 1) }, (_, offset) => {
    const index = place + 1 + offset;
    return { index, label: cell(labelLine, index) };
  });
  const below = lines.filter(({ index }) => index > labelLine);
  return {
    orientation,
    lines: below,
    corner: cell(labelLine, place),
    sizes,
    unitPlace: placeOfUnits(below, sizes, cell),
    cell,
    placeOf: (line, size) =>
      orientation === 'across' ? { row: line + 1, column: size + 1 } : { row: size + 1, column: line + 1 },
    labelLine,
    headingPlace: place,
  };
}

/** The place where every line of a measure that says anything names a unit and nothing else. */
function placeOfUnits(
  lines: ChartTable['lines'],
  sizes: ChartTable['sizes'],
  cell: ChartTable['cell'],
): ChartTable['unitPlace'] {
  const measures = lines.filter(({ means }) => means?.is === 'measure');
  const place = sizes.find(({ index: size }) => {
    const said = measures.map(({ index }) => cell(index, size)).filter((each) => each !== '');
    return said.length > 0 && said.every((each) => unitAlone(each) !== null);
  });
  return place?.index ?? null;
}

/**
 * The labels stand on the line headed `Size`. Without one they stand on the nearest line above the first measure that is
 * not mostly lengths, for that may be a measure nobody knows; where all are, on the topmost: sizes may be numbers.
 */
function lineOfLabels(grid: ChartGrid, kind: GarmentKind, place: number, first: number): number | null {
  const above = grid.slice(0, first).map((row, index) => ({ index, row, means: readHeading(row[place] ?? '', kind) }));
  const holding = above.filter(({ row }) => row.slice(place + 1).some((cell) => cell !== ''));
  const headed = holding.findLast(({ means }) => means?.is === 'sizes');
  const unnamed = holding.filter(({ means }) => means === null);
  const worded = unnamed.findLast(({ row }) => {
    const said = row.slice(place + 1).filter((cell) => cell !== '');
    return said.filter(holdsLength).length * 2 < said.length;
  });
  return (headed ?? worded ?? unnamed[0])?.index ?? null;
}

function turned(grid: ChartGrid): ChartGrid {
  const width = Math.max(0, ...grid.map((row) => row.length));
  return Array.from({ length: width }, (_, column) => grid.map((row) => row[column] ?? ''));
}
