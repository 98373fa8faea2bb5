import { MOST_SIZES } from '../blank-style';
import type { GarmentKind } from '../kinds';
import type { MeasureName } from '../measures';
import type { ChartFault, ChartNote } from './chart-reading';
import type { ChartTable } from './chart-table';
import { unitAlone } from './chart-unit';
import { type Heading, readHeading } from './measure-headings';
import { holdsLength, holdsNumber } from './read-cell';

const LONGEST_LABEL = 30;
/**
 * What sizes are called (common practice, no source): `S`, `2XL`, `YM`, `XLT`, `5/6`, `3-4 yrs`, `18M`, `Large`. Told only of
 * labels that give no measure: whatever stands over lengths is a size.
 */
const SIZE_WORD =
  /^([ym]?\d{0,2}x{0,5}[sml]t?|\d{1,3}[tmyw]?|small|medium|large|low|mid|high|short|regular|long|tall|nb|newborn|os|osfa)$/;
const WORD_BESIDE =
  /^(adults?|youths?|kids?|mens?|womens?|ladies|toddlers?|infants?|extra|one|size|x|mo|mos|months?|y|yrs?|years?)$/;

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
      ({ index: line, means }) => means?.is === 'measure' && holdsNumber(table.cell(line, index)),
    );
    const means = readHeading(label, kind);
    if (index === table.unitPlace) {
      // The units of the lines, no size.
    } else if (means?.is === 'tolerance') {
      notes.push({ code: 'toleranceLeftOut', ...table.placeOf(table.labelLine, index), heading: label });
    } else if (label === '') {
      if (holds) fault('noLabel', table.labelLine, index);
    } else if (!(holds || isSizeLabel(label))) {
      // A remark beside or under the chart, no size.
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

function isSizeLabel(label: string): boolean {
  const words = label.toLowerCase().match(/[\p{L}\d]+/gu) ?? [];
  const are = (shape: RegExp) => words.filter((word) => shape.test(word)).length;
  return (
    label === 'One size' ||
    (are(SIZE_WORD) > 0 && words.every((word) => SIZE_WORD.test(word) || WORD_BESIDE.test(word)))
  );
}

/** Why a line of lengths under such a heading is not taken; headings of no lengths are left alone. */
const UNTAKEN: Readonly<Partial<Record<Heading['is'] | 'unknown', ChartFault['code']>>> = {
  body: 'bodyMeasure',
  otherKind: 'measureOfOtherKind',
  unknown: 'unknownMeasure',
};

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
    const untaken = UNTAKEN[means?.is ?? 'unknown'];
    const holds = sizes.some((size) => holdsLength(table.cell(index, size.index)));
    if (means?.is === 'measure') {
      if (taken.some((other) => other.means.measure === means.measure)) refuse('repeatedMeasure');
      else {
        const alone = table.unitPlace === null ? null : unitAlone(table.cell(index, table.unitPlace));
        taken.push({ index, heading, means: { ...means, unit: means.unit ?? alone } });
      }
    } else if (means?.is === 'tolerance') {
      notes.push({ code: 'toleranceLeftOut', ...table.placeOf(index, table.headingPlace), heading });
    } else if (holds && untaken) refuse(untaken);
  }
  return taken;
}
