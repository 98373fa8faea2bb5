import { type Micrometres, roundUm } from '../../measure/length';
import { MOST_SIZES } from '../blank-style';
import type { MeasureName } from '../measures';
import { chartGrid } from './chart-grid';
import { lengthsOfLine, mostUsed, unitOfChart } from './chart-lengths';
import { type AddFault, type MeasureLine, measureLines, type SizePlace, sizesOf } from './chart-lines';
import {
  type ChartFault,
  type ChartNote,
  type ChartReading,
  type ChartReads,
  MOST_CHART_CHARACTERS,
  type ReadSize,
} from './chart-reading';
import { type ChartTable, chartTable } from './chart-table';
import { costOf, saysNothing } from './read-cell';

const LONGEST_FOUND = 60;
/** A chest that is this many times the length is suspected of being the whole way round (common practice, no source). */
const SUSPECT_CHEST_OF_LENGTH = 1.15;

/**
 * Reads a size chart as it is pasted from a spreadsheet or stands in a CSV file: sizes across or down, inches, centimetres
 * or millimetres. What cannot be taken is left out cell by cell and named; the rest is kept. Whether the measures can be
 * those of a garment is for `checkedChart` to say.
 */
export function readChartText(text: string, reads: ChartReads): ChartReading {
  if (text.length > MOST_CHART_CHARACTERS) return { ok: false, reason: 'tooLong', unknownRows: [] };
  if (text.replace(/[\uFEFF\s,;|]/g, '') === '') return { ok: false, reason: 'empty', unknownRows: [] };
  const grid = chartGrid(text);
  if (!grid) return { ok: false, reason: 'tooLong', unknownRows: [] };
  const rows = grid.map((row) => row.filter((cell) => cell !== '').join(' '));
  const table = chartTable(grid, reads.kind);
  if (typeof table === 'string')
    return { ok: false, reason: table, unknownRows: rows.filter((row) => row !== '').slice(0, MOST_SIZES) };
  return readTable(table, rows, reads);
}

function readTable(table: ChartTable, rows: readonly string[], reads: ChartReads): ChartReading {
  const faults: ChartFault[] = [];
  const notes: ChartNote[] = [];
  const used = new Set<number>();
  const use = (line: number, size: number) => used.add(table.placeOf(line, size).row);
  const fault: AddFault = (code, line, size, about) => {
    const { row, column } = table.placeOf(line, size);
    const found = table.cell(line, size).slice(0, LONGEST_FOUND);
    faults.push({ code, row, column, found, measure: about?.measure ?? null, size: about?.size ?? null });
  };

  const sizes = sizesOf(table, reads.kind, fault, notes);
  const lines = measureLines(table, sizes, fault, notes);
  const costs = table.lines.find(({ means }) => means?.is === 'cost');
  use(table.labelLine, table.headingPlace);
  for (const { index } of [...lines, ...(costs ? [costs] : [])]) use(index, table.headingPlace);
  for (const { index } of sizes) use(table.labelLine, index);
  for (const { row } of faults) used.add(row);
  for (const note of notes) if (note.code === 'toleranceLeftOut') used.add(note.row);

  const unknownRows = rows.filter((row, index) => row !== '' && !used.has(index + 1));
  const chartUnit = unitOfChart(table, lines, sizes, unknownRows, reads, notes);
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
  noteReach(lines, read, reads, notes);
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

/** Says where half or a quarter was taken, and asks where a chest may go the whole way round. */
function noteReach(
  lines: readonly MeasureLine[],
  sizes: readonly ReadSize[],
  { chestIs }: ChartReads,
  notes: ChartNote[],
): void {
  for (const { means, heading } of lines) {
    const { measure, reach, share, plain } = means;
    if (reach === 'girth') notes.push({ code: share === 0.25 ? 'girthQuartered' : 'girthHalved', measure, heading });
    else if (reach === 'bothLegs') notes.push({ code: 'bothLegsHalved', measure, heading });
    else if (measure !== 'chestWidth') continue;
    else if (chestIs === 'girth') notes.push({ code: 'girthHalved', measure, heading });
    else if (plain && sizes.filter(isSuspect).length * 2 > sizes.length)
      notes.push({ code: 'mayBeGirth', measure, heading });
  }
}

function isSuspect({ entered: { chestWidth, bodyLength } }: ReadSize): boolean {
  return chestWidth !== undefined && bodyLength !== undefined && chestWidth > bodyLength * SUSPECT_CHEST_OF_LENGTH;
}

function withHalfChest(size: ReadSize, lines: readonly MeasureLine[]): ReadSize {
  const { chestWidth } = size.entered;
  const line = lines.find(({ means }) => means.measure === 'chestWidth');
  if (chestWidth === undefined || line?.means.reach === 'girth') return size;
  return { ...size, entered: { ...size.entered, chestWidth: roundUm(chestWidth / 2) } };
}
