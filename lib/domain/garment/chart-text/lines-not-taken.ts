import { MOST_SIZES } from '../blank-style';
import type { SizePlace } from './chart-lines';
import type { CellPlace, ChartTable } from './chart-table';

type Taken = {
  readonly lines: readonly { readonly index: number }[];
  readonly sizes: readonly SizePlace[];
  /** Places that faults and notes speak of. */
  readonly told: readonly CellPlace[];
};

/** Rows of which nothing was taken and nothing is said, as they stand, and the headings of such columns. */
export function linesNotTaken(table: ChartTable, rows: readonly string[], { lines, sizes, told }: Taken): string[] {
  const last = sizes.length === MOST_SIZES ? sizes.at(-1) : undefined;
  const beyond = last ? table.sizes.filter(({ index }) => index > last.index) : [];
  const unit = table.unitPlace === null ? [] : [{ index: table.unitPlace }];
  const places = [
    ...lines.map(({ index }) => table.placeOf(index, table.headingPlace)),
    ...[...sizes, ...beyond, ...unit].map(({ index }) => table.placeOf(table.labelLine, index)),
    table.placeOf(table.labelLine, table.headingPlace),
    ...told,
  ];
  const [usedRows, usedColumns] = [new Set(places.map(({ row }) => row)), new Set(places.map(({ column }) => column))];
  const columns =
    table.orientation === 'down'
      ? table.lines.map(({ index, heading }) => ({ index, said: heading }))
      : table.sizes.map(({ index, label }) => ({ index, said: label }));
  return [
    ...rows.filter((row, index) => row !== '' && !usedRows.has(index + 1)),
    ...columns.filter(({ index, said }) => said !== '' && !usedColumns.has(index + 1)).map(({ said }) => said),
  ];
}
