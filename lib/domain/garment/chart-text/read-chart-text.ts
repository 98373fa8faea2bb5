import type { Micrometres } from '../../measure/length';
import { MOST_SIZES } from '../blank-style';
import type { MeasureName } from '../measures';
import { type ChartGrid, chartGrid } from './chart-grid';
import { lengthsOfLine, mostUsed, unitOfChart } from './chart-lengths';
import { type AddFault, measureLines, type SizePlace, sizesOf } from './chart-lines';
import {
  type ChartFault,
  type ChartNote,
  type ChartReading,
  type ChartReads,
  MOST_CHART_CHARACTERS,
  type ReadSize,
} from './chart-reading';
import { type ChartTable, chartTable } from './chart-table';
import { noteReach, withHalfChest } from './chest-reach';
import { linesNotTaken } from './lines-not-taken';
import { costOf, saysNothing } from './read-cell';

const LONGEST_FOUND = 60;

/**
 * Reads a size chart as it is pasted from a spreadsheet or stands in a CSV file: sizes across or down, inches, centimetres
 * or millimetres. What cannot be taken is left out cell by cell and named; the rest is kept. Whether the measures can be
 * those of a garment is for `checkedChart` to say.
 */
export function readChartText(text: string, reads: ChartReads): ChartReading {
  if (text.length > MOST_CHART_CHARACTERS) return { ok: false, reason: 'tooLong', unknownRows: [] };
  if (text.replace(/[\uFEFF\s,;|]/g, '') === '') return { ok: false, reason: 'empty', unknownRows: [] };
  const grid = chartGrid(text, reads.kind);
  if (!grid) return { ok: false, reason: 'tooLong', unknownRows: [] };
  const table = chartTable(grid, reads.kind);
  if (typeof table === 'string')
    return {
      ok: false,
      reason: table,
      unknownRows: grid
        .map(rowText)
        .filter((row) => row !== '')
        .slice(0, MOST_SIZES),
    };
  return readTable(table, grid, reads);
}

function rowText(row: ChartGrid[number]): string {
  return row.filter((cell) => cell !== '').join(' ');
}

function readTable(table: ChartTable, grid: ChartGrid, reads: ChartReads): ChartReading {
  const faults: ChartFault[] = [];
  const notes: ChartNote[] = [];
  const fault: AddFault = (code, line, size, about) => {
    const { row, column } = table.placeOf(line, size);
    const found = table.cell(line, size).slice(0, LONGEST_FOUND);
    faults.push({ code, row, column, found, measure: about?.measure ?? null, size: about?.size ?? null });
  };

  const sizes = sizesOf(table, reads.kind, fault, notes);
  const lines = measureLines(table, sizes, fault, notes);
  const costs = table.lines.find(({ means }) => means?.is === 'cost');
  const rows = grid.map(rowText);
  // A unit in a row of numbers is that row's own.
  const remarks = grid.filter((row) => !row.slice(1).some((cell) => /\d/.test(cell))).map(rowText);
  const told = [...faults, ...notes.filter((note) => note.code === 'toleranceLeftOut')];
  const unknownRows = linesNotTaken(table, rows, { lines: costs ? [...lines, costs] : lines, sizes, told });
  const chartUnit = unitOfChart(table, lines, sizes, remarks, reads, notes);
  const measured = new Map(lines.map((line) => [line, lengthsOfLine(table, line, sizes, chartUnit, fault)]));
  const read = sizes.map((size): ReadSize => {
    const entered = lines.flatMap((line): [MeasureName, Micrometres][] => {
      const um = measured.get(line)?.get(size);
      return um === undefined ? [] : [[line.means.measure, um]];
    });
    const isBlank = entered.length === 0 && !faults.some((each) => each.size === size.label);
    if (isBlank) fault('emptySize', table.labelLine, size.index, { size: size.label });
    return {
      label: size.label,
      entered: Object.fromEntries(entered),
      costMinor: costs ? costAt(table, costs.index, size, fault) : null,
    };
  });
  notes.push(...noteReach(lines, read, reads));
  const halved = reads.chestIs === 'girth' ? read.map((size) => withHalfChest(size, lines)) : read;
  faults.sort((a, b) => a.row - b.row || a.column - b.column);
  return {
    ok: true,
    sizes: halved,
    unit: mostUsed(lines, chartUnit),
    orientation: table.orientation,
    faults,
    notes,
    unknownRows,
  };
}

function costAt(table: ChartTable, line: number, size: SizePlace, fault: AddFault): number | null {
  const cell = table.cell(line, size.index);
  if (saysNothing(cell)) return null;
  const read = costOf(cell);
  if (read.ok) return read.value;
  fault(read.code, line, size.index, { size: size.label });
  return null;
}
