import Papa from 'papaparse';
import { itemsText } from './items-text';
import type { GarmentOnOffer, PeopleList } from './list';
import { isBlankLine } from './list';

/** Texts a spreadsheet would run as a formula, and those that would be taken for guarded ones when they are read back. */
const TO_GUARD = /^[=+\-@\t\r\n＝＋－＠']/u;

/**
 * The list as a CSV file (RFC 4180, UTF-8 with a byte order mark so that spreadsheets see the letters): a line a person, a
 * column each of words and of each garment's sizes. What a spreadsheet would run as a formula is guarded by an apostrophe.
 */
export function peopleCsv(
  { columns, lines }: Pick<PeopleList, 'columns' | 'lines'>,
  garments: readonly GarmentOnOffer[],
  sizeHeading: (garment: GarmentOnOffer) => string,
): string {
  const head = [...columns.map(({ name }) => name), ...garments.map(sizeHeading)];
  const rows = lines
    .filter((line) => !isBlankLine(line))
    .map(({ fields, items }) => [
      ...columns.map(({ columnId }) => fields[columnId] ?? ''),
      ...garments.map((garment) => itemsText(items, garment)),
    ]);
  return `\uFEFF${Papa.unparse([head, ...rows], { escapeFormulae: TO_GUARD, newline: '\r\n' })}\r\n`;
}
