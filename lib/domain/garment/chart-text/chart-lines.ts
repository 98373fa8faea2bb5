import { MOST_SIZES } from '../blank-style';
import type { GarmentKind } from '../kinds';
import type { MeasureName } from '../measures';
import type { ChartFault, ChartNote } from './chart-reading';
import type { ChartTable } from './chart-table';
import { type Heading, readHeading } from './measure-headings';
import { holdsLength } from './read-cell';

const LONGEST_LABEL = 30;
/** A label that is longer than this and gives no measure is a remark under the chart. */
const LONGEST_BARE_LABEL = 12;

/** A line of a chart whose measure is taken. */
export type MeasureLine = {
  readonly index: number;
  readonly heading: string;
  readonly means: Extract<Heading, { is: 'measure' }>;
};
/** A size of a chart and where it stands. */
export type SizePlace = ChartTable['sizes'][number];

/** Notes that something on a line, at a size or before it all, could not be taken. */
export type AddFault = (
  code: ChartFault['code'],
  line: number,
  size: number,
  about?: { readonly measure?: MeasureName; readonly size?: string },
) => void;

/** The sizes that count: labelled, once each, no more than a style can have. */
export function sizesOf(table: ChartTable, kind: GarmentKind, fault: AddFault, notes: ChartNote[]): SizePlace[] {
  const kept: SizePlace[] = [];
  for (const size of table.sizes) {
    const { index, label } = size;
    const holds = table.lines.some(
      ({ index: line, means }) => means?.is === 'measure' && holdsLength(table.cell(line, index)),
    );
    const means = readHeading(label, kind);
    if (means?.is === 'tolerance') {
      notes.push({ code: 'toleranceLeftOut', ...table.placeOf(table.labelLine, index), heading: label });
    } else if (label === '') {
      if (holds) fault('noLabel', table.labelLine, index);
    } else if (!holds && (means || label.length > LONGEST_BARE_LABEL)) {
      // A remark under the chart, no size.
    } else if (label.length > LONGEST_LABEL) {
      fault('labelTooLong', table.labelLine, index);
    } else if (kept.some((other) => other.label.toLowerCase() === label.toLowerCase())) {
      fault('repeatedSize', table.labelLine, index, { size: label });
    } else if (kept.length === MOST_SIZES) {
      fault('tooManySizes', table.labelLine, index);
      break;
    } else kept.push(size);
  }
  return kept;
}

/** The lines whose measure is taken; for others that hold lengths, why not. */
export function measureLines(
  table: ChartTable,
  sizes: readonly SizePlace[],
  fault: AddFault,
  notes: ChartNote[],
): MeasureLine[] {
  const taken: MeasureLine[] = [];
  for (const { index, heading, means } of table.lines) {
    const about = means?.is === 'measure' ? { measure: means.measure } : {};
    const refuse = (code: ChartFault['code']) => fault(code, index, table.headingPlace, about);
    const holds = sizes.some((size) => holdsLength(table.cell(index, size.index)));
    if (means?.is === 'measure') {
      if (taken.some((other) => other.means.measure === means.measure)) refuse('repeatedMeasure');
      else taken.push({ index, heading, means });
    } else if (means?.is === 'tolerance') {
      notes.push({ code: 'toleranceLeftOut', ...table.placeOf(index, table.headingPlace), heading });
    } else if (holds && means?.is !== 'cost' && means?.is !== 'sizes') {
      refuse(
        means?.is === 'body' ? 'bodyMeasure' : means?.is === 'otherKind' ? 'measureOfOtherKind' : 'unknownMeasure',
      );
    }
  }
  return taken;
}
