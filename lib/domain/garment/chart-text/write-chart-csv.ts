import Papa from 'papaparse';
import { type LengthUnit, type Micrometres, UM_PER_CM, UM_PER_INCH } from '../../measure/length';
import type { BlankStyle } from '../blank-style';
import { kindMeasures } from '../kinds';
import { headingOf } from './measure-headings';

/** Decimals that keep a micrometre apart in either unit. */
const DECIMALS = 5;
/** Texts a spreadsheet would run as a formula, and those that would be taken for guarded ones when they are read back. */
const TO_GUARD = /^[=+\-@\t\r\n＝＋－＠']/;

/**
 * A style's chart as a CSV file (RFC 4180, UTF-8 with a byte order mark so that spreadsheets see the letters): a row a size,
 * a column a measure that any size gives, lengths in decimals of the unit. `readChartText` reads it back to the same sizes.
 */
export function chartCsv({ kind, sizes }: Pick<BlankStyle, 'kind' | 'sizes'>, unit: LengthUnit): string {
  const measures = kindMeasures(kind).filter((measure) => sizes.some(({ entered }) => entered[measure] !== undefined));
  const hasCosts = sizes.some(({ costMinor }) => costMinor !== null);
  const head = [
    'Size',
    ...measures.map((measure) => `${headingOf(measure, kind)} (${unit})`),
    ...(hasCosts ? ['Cost each'] : []),
  ];
  const rows = sizes.map(({ label, entered, costMinor }) => [
    label,
    ...measures.map((measure) => decimals(entered[measure], unit)),
    ...(hasCosts ? [costMinor === null ? '' : (costMinor / 100).toFixed(2)] : []),
  ]);
  return `\uFEFF${Papa.unparse([head, ...rows], { escapeFormulae: TO_GUARD, newline: '\r\n' })}\r\n`;
}

function decimals(um: Micrometres | undefined, unit: LengthUnit): string {
  return um === undefined ? '' : String(Number((um / (unit === 'in' ? UM_PER_INCH : UM_PER_CM)).toFixed(DECIMALS)));
}
