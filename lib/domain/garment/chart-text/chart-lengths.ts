import { type LengthUnit, type Micrometres, mmFromUm, roundUm } from '../../measure/length';
import type { AddFault, MeasureLine, SizePlace } from './chart-lines';
import type { ChartNote, ChartReads, WrittenUnit } from './chart-reading';
import type { ChartTable } from './chart-table';
import { numberUnit, sentenceUnit } from './chart-unit';
import { guessUnit } from './guess-unit';
import { holdsLength, lengthOf, saysNothing } from './read-cell';
import { strayLengths } from './stray-lengths';

/** The unit of numbers whose heading and cell say none: the chart's own word, the maker's, or a guess that is said. */
export function unitOfChart(
  table: ChartTable,
  lines: readonly MeasureLine[],
  sizes: readonly SizePlace[],
  remarks: readonly string[],
  reads: ChartReads,
  notes: ChartNote[],
): WrittenUnit {
  const stated = [table.corner, ...remarks].map(sentenceUnit).find((unit) => unit !== null);
  const headed = lines.map(({ means }) => means.unit).find((unit) => unit !== null);
  const said = stated ?? headed;
  if (reads.unit !== 'auto') {
    if (said && said !== reads.unit) notes.push({ code: 'unitOfChart', unit: said });
    return said ?? reads.unit;
  }
  if (said) return said;
  const cells = lines.flatMap(({ index, means }) =>
    sizes.map((size) => ({ means, cell: table.cell(index, size.index) })).filter(({ cell }) => holdsLength(cell)),
  );
  const written = cells.map(({ cell }) => numberUnit(cell)).find((unit) => unit !== null);
  if (written) return written;
  const bare = cells.flatMap(({ means, cell }) => {
    const mm = lengthOf(cell, 'mm');
    return mm.ok ? [{ measure: means.measure, value: mmFromUm(mm.value) * means.share }] : [];
  });
  const guess = guessUnit(reads.kind, bare);
  if (bare.length > 0) notes.push({ code: 'unitGuessed', ...guess });
  return guess.unit;
}

/** The lengths of one line, cell by cell; a cell that is in another unit than most of its line, by its word or by its size, is left out. */
export function lengthsOfLine(
  table: ChartTable,
  { index, means }: MeasureLine,
  sizes: readonly SizePlace[],
  chartUnit: WrittenUnit,
  fault: AddFault,
): Map<SizePlace, Micrometres> {
  const cells = sizes
    .map((size) => ({ size, cell: table.cell(index, size.index) }))
    .filter(({ cell }) => !saysNothing(cell))
    .map((each) => ({ ...each, unit: numberUnit(each.cell) }));
  const bareUnit = means.unit ?? mostOften(cells.flatMap(({ unit }) => unit ?? [])) ?? chartUnit;
  const lineUnit = mostOften(cells.map(({ unit }) => unit ?? bareUnit));
  const lengths = new Map<SizePlace, Micrometres>();
  for (const { size, cell, unit } of cells) {
    const about = { measure: means.measure, size: size.label };
    const read = lengthOf(cell, bareUnit);
    if (!read.ok) fault(read.code, index, size.index, about);
    else if ((unit ?? bareUnit) !== lineUnit) fault('mixedUnits', index, size.index, about);
    else lengths.set(size, roundUm(read.value * means.share));
  }
  for (const size of strayLengths(lengths)) {
    if (numberUnit(table.cell(index, size.index)) !== null) continue;
    fault('mixedUnits', index, size.index, { measure: means.measure, size: size.label });
    lengths.delete(size);
  }
  return lengths;
}

/** The unit most lines are written in. */
export function mostUsed(lines: readonly MeasureLine[], chartUnit: WrittenUnit): LengthUnit {
  const unit = mostOften(lines.map(({ means }) => means.unit ?? chartUnit)) ?? chartUnit;
  return unit === 'in' ? 'in' : 'cm';
}

/** The one that stands most often, the first of several. */
function mostOften<Each>(all: readonly Each[]): Each | undefined {
  const times = new Map<Each, number>();
  for (const each of all) times.set(each, (times.get(each) ?? 0) + 1);
  return [...times].sort(([, a], [, b]) => b - a)[0]?.[0];
}
