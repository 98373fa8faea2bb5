import type { LengthUnit } from '../../measure/length';
import type { GarmentKind } from '../kinds';
import type { EnteredMeasures, MeasureName } from '../measures';

/** Most characters of a chart that are read: sixty sizes of forty measures take some twenty thousand. */
export const MOST_CHART_CHARACTERS = 200_000;

/** A unit as charts are written in. */
export type WrittenUnit = LengthUnit | 'mm';

/** What is known of a chart before it is read. */
export type ChartReads = {
  readonly kind: GarmentKind;
  /** The unit of numbers that stand without one; `auto` takes it from the size of the numbers and says so. */
  readonly unit: LengthUnit | 'auto';
  /** Set when the maker has said that the chest is given the whole way round: it is halved. */
  readonly chestIs?: 'girth';
};

/** Why a cell (or a size, or a heading) of a chart was left out. */
export const CHART_FAULTS = [
  /** A cell under a measure that holds something else than a length. */
  'notALength',
  'zero',
  'negative',
  /** Longer than any field takes. */
  'outOfRange',
  /** A cell in another unit than the other cells of its measure, by its word or by the size of its number. */
  'mixedUnits',
  /** A cost that is no amount with at most two decimals, or dearer than any blank. */
  'notACost',
  /** A size whose label stood further up already: the first is kept. */
  'repeatedSize',
  /** A size with nothing under it; it is kept, with nothing entered. */
  'emptySize',
  /** Measures of a size without a label. */
  'noLabel',
  'labelTooLong',
  /** The first size that is more than a style can have; it and those after it are left out. */
  'tooManySizes',
  /** A heading over lengths that names no measure. */
  'unknownMeasure',
  /** A heading that names a measure this kind of garment does not have. */
  'measureOfOtherKind',
  /** A heading of body measures (`to fit chest`), where a chart needs those of the garment. */
  'bodyMeasure',
  /** A heading that names a measure which stood already: the first is kept. */
  'repeatedMeasure',
] as const;

/** Something that could not be taken, and where it stands in the text: row and column from 1, as a spreadsheet counts. */
export type ChartFault = {
  readonly code: (typeof CHART_FAULTS)[number];
  readonly row: number;
  readonly column: number;
  /** What stands there, shortened to 60 characters. */
  readonly found: string;
  /** The measure it was meant for, where that is known. */
  readonly measure: MeasureName | null;
  /** The label of the size it was meant for, where that is known. */
  readonly size: string | null;
};

/** What was done, guessed or left to the maker to say while reading: to be shown beside the result. */
export type ChartNote =
  /** Nothing said the unit: the numbers suggest it. `unsure` when another unit would fit nearly as well. */
  | { readonly code: 'unitGuessed'; readonly unit: WrittenUnit; readonly unsure: boolean }
  /** The chart states another unit than the maker chose; the chart's was taken. */
  | { readonly code: 'unitOfChart'; readonly unit: WrittenUnit }
  /** The heading says the whole way round; the flat width, half of it, was taken. */
  | { readonly code: 'girthHalved'; readonly measure: MeasureName; readonly heading: string }
  /** A waist over both legs, where the measure is that of one leg: half of it was taken. */
  | { readonly code: 'bothLegsHalved'; readonly measure: MeasureName; readonly heading: string }
  /** A waist the whole way round, where the measure is that of one leg laid flat: a quarter of it was taken. */
  | { readonly code: 'girthQuartered'; readonly measure: MeasureName; readonly heading: string }
  /** A question: the chest is so wide for the length that it may be the whole way round. Read again with `chestIs`. */
  | { readonly code: 'mayBeGirth'; readonly measure: MeasureName; readonly heading: string }
  /** Cutting tolerances printed in the chart are not sizes and were left out. */
  | { readonly code: 'toleranceLeftOut'; readonly row: number; readonly column: number; readonly heading: string };

/** A size as the text gives it. Any measure may be missing; the cost is in minor units, null where none is given. */
export type ReadSize = {
  readonly label: string;
  readonly entered: EnteredMeasures;
  readonly costMinor: number | null;
};

/** Why a text is no chart at all. */
export const CHART_REFUSALS = [
  'empty',
  /** More characters or cells than any chart has. */
  'tooLong',
  /** No measure of this kind of garment is named in it. */
  'noMeasures',
  /** Measures are named, but no sizes stand beside or below them. */
  'noSizes',
] as const;

/** What could be taken from a text, what could not, and what was done on the way. */
export type ChartReading =
  | {
      readonly ok: true;
      /** In the order of the text. */
      readonly sizes: readonly ReadSize[];
      /** The unit most of it is written in; millimetres count as centimetres. */
      readonly unit: LengthUnit;
      /** `across`: a column a size; `down`: a row a size. */
      readonly orientation: 'across' | 'down';
      readonly faults: readonly ChartFault[];
      readonly notes: readonly ChartNote[];
      /** Titles, remarks and other lines without measures, as they stand, and headings of columns nothing was taken of. */
      readonly unknownRows: readonly string[];
    }
  | { readonly ok: false; readonly reason: (typeof CHART_REFUSALS)[number]; readonly unknownRows: readonly string[] };
