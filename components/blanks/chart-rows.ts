import type { StyleSize } from '@/lib/domain/garment/blank-style';
import type { ChartReading, ReadSize } from '@/lib/domain/garment/chart-text/chart-reading';
import { type EnteredMeasures, MEASURE_NAMES, type MeasureName } from '@/lib/domain/garment/measures';
import { formatLengthValue } from '@/lib/domain/measure/format-length';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import { parseLength } from '@/lib/domain/measure/parse-length';
import { amountText, minorFromHundredths } from '@/lib/domain/money/amount';

/** What a chart is typed in: the shop's unit and currency. */
export type ChartUnits = { readonly unit: LengthUnit; readonly currency: string };

/** A measure as its field shows it. `um` is what it stands for while the text is as it was shown, to the micrometre. */
export type ChartCell = { readonly text: string; readonly um: Micrometres | null };

/** One size of a chart as it stands in the table, sound or not. */
export type ChartRow = {
  /** The size's id; one made up here for a size that is not kept yet. */
  readonly id: string;
  readonly label: string;
  readonly cells: Readonly<Partial<Record<MeasureName, ChartCell>>>;
  readonly cost: string;
};

/** A row nobody has typed into. */
export function emptyRow(id: string): ChartRow {
  return { id, label: '', cells: {}, cost: '' };
}

/** A measure as the shop's unit shows it. */
export function cellOf(um: Micrometres, unit: LengthUnit): ChartCell {
  return { text: formatLengthValue(um, unit), um };
}

/** The length a cell stands for; null where it is empty or none. */
export function cellUm(cell: ChartCell | undefined, unit: LengthUnit): Micrometres | null {
  if (!cell) return null;
  if (cell.um !== null && cell.text.trim() === formatLengthValue(cell.um, unit)) return cell.um;
  const parsed = parseLength(cell.text, unit);
  return parsed.ok ? parsed.um : null;
}

/** What a row gives, as far as it can be read. */
export function enteredOf(row: Pick<ChartRow, 'cells'>, unit: LengthUnit): EnteredMeasures {
  return Object.fromEntries(
    MEASURE_NAMES.flatMap((measure) => {
      const um = cellUm(row.cells[measure], unit);
      return um === null ? [] : [[measure, um]];
    }),
  );
}

/** The rows of sizes that are kept. */
export function rowsOfSizes(sizes: readonly StyleSize[], { unit, currency }: ChartUnits): ChartRow[] {
  return sizes.map(({ sizeId, label, entered, costMinor }) => ({
    id: sizeId,
    label,
    cells: cellsOf(entered, unit),
    cost: costMinor === null ? '' : amountText(costMinor, currency),
  }));
}

function cellsOf(entered: EnteredMeasures, unit: LengthUnit): ChartRow['cells'] {
  return Object.fromEntries(
    MEASURE_NAMES.flatMap((measure) => {
      const um = entered[measure];
      return um === undefined ? [] : [[measure, cellOf(um, unit)]];
    }),
  );
}

type WholeReading = Extract<ChartReading, { ok: true }>;

/**
 * The table with a chart that was read put into it. Sizes are the same by their label: they keep their id, and their cost
 * where the chart gives none. Sizes the chart lacks stay, each after the size it came after. A cell that could not be read
 * holds what stood there, to be mended in place.
 */
export function rowsWithReading(
  before: readonly ChartRow[],
  { sizes, faults }: Pick<WholeReading, 'sizes' | 'faults'>,
  { unit, currency }: ChartUnits,
  newRowId: () => string,
): ChartRow[] {
  const used = before.filter((row) => row.label.trim() !== '');
  const read = sizes.map((size): ChartRow => {
    const same = used.find((row) => isSameLabel(row.label, size.label));
    const broken = faults.flatMap(({ code, size: label, measure, found }) =>
      label === size.label && measure && BROKEN_CELLS.has(code) ? [[measure, { text: found, um: null }]] : [],
    );
    return {
      id: same?.id ?? newRowId(),
      label: same?.label ?? size.label,
      cells: { ...cellsOf(size.entered, unit), ...Object.fromEntries(broken) },
      cost: costText(size, currency) ?? same?.cost ?? '',
    };
  });
  return used.reduce<ChartRow[]>((rows, row, index) => {
    if (rows.some(({ id }) => id === row.id)) return rows;
    const predecessor = rows.findIndex(({ id }) => id === used[index - 1]?.id);
    return rows.toSpliced(predecessor + 1, 0, row);
  }, read);
}

/** Labels of rows that a chart which was read does not have. */
export function labelsLeft(rows: readonly ChartRow[], sizes: readonly Pick<ReadSize, 'label'>[]): string[] {
  return rows
    .map(({ label }) => label.trim())
    .filter((label) => label !== '' && !sizes.some((size) => isSameLabel(size.label, label)));
}

/** Faults of a cell that is to be typed again. */
const BROKEN_CELLS: ReadonlySet<string> = new Set(['notALength', 'zero', 'negative', 'outOfRange', 'mixedUnits']);

function costText({ costMinor }: Pick<ReadSize, 'costMinor'>, currency: string): string | null {
  return costMinor === null ? null : amountText(minorFromHundredths(costMinor, currency), currency);
}

function isSameLabel(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase();
}

/** Whether somebody typed nothing into a row. */
export function isEmptyRow(row: ChartRow): boolean {
  return [row.label, row.cost, ...Object.values(row.cells).map(({ text }) => text)].every((text) => text.trim() === '');
}

/** The measures of the kind that some row gives. */
export function givenMeasures(rows: readonly ChartRow[], measures: readonly MeasureName[]): MeasureName[] {
  return measures.filter((measure) => rows.some(({ cells }) => (cells[measure]?.text ?? '').trim() !== ''));
}
