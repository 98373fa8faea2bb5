import {
  type LengthUnit,
  LONGEST_LENGTH_UM,
  type Micrometres,
  roundUm,
  UM_PER_CM,
  UM_PER_INCH,
  UM_PER_MM,
} from './length';

export type LengthRefusal = 'empty' | 'notALength' | 'divisionByZero' | 'tooLong';
export type ParsedLength = { ok: true; um: Micrometres } | { ok: false; reason: LengthRefusal };

const UM_PER_WRITTEN_UNIT: Record<string, number> = {
  in: UM_PER_INCH,
  inch: UM_PER_INCH,
  inches: UM_PER_INCH,
  '"': UM_PER_INCH,
  cm: UM_PER_CM,
  mm: UM_PER_MM,
};

const VULGAR_FRACTIONS: Record<string, string> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

const WRITTEN_LENGTH =
  /^([+-])?\s*(?:(\d+)\s*[- ]\s*(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|(\d+(?:[.,]\d*)?|[.,]\d+))\s*(inches|inch|in|cm|mm|")?\.?$/;

/**
 * Reads a length as a maker types it on the tape: `3 1/2`, `3.5"`, `3½`, `9cm`, `90 mm`, `1,5`.
 * A bare number is in `unit`. Returns whole micrometres (negative allowed), or why it could not be read.
 */
export function parseLength(written: string, unit: LengthUnit): ParsedLength {
  const tidy = tidyLength(written);
  if (tidy === '') return { ok: false, reason: 'empty' };
  const match = WRITTEN_LENGTH.exec(tidy);
  if (!match) return { ok: false, reason: 'notALength' };
  const [, sign, whole, mixedTop, mixedBottom, top, bottom, decimal, writtenUnit] = match;
  const value = decimal
    ? Number(decimal.replace(',', '.'))
    : Number(whole ?? 0) + Number(mixedTop ?? top) / Number(mixedBottom ?? bottom);
  if (!Number.isFinite(value)) return { ok: false, reason: 'divisionByZero' };
  const um = roundUm(value * (UM_PER_WRITTEN_UNIT[writtenUnit ?? unit] ?? UM_PER_INCH) * (sign === '-' ? -1 : 1));
  return Math.abs(um) > LONGEST_LENGTH_UM ? { ok: false, reason: 'tooLong' } : { ok: true, um };
}

/** True for `+1/8` and the like: a step to add to the present reading, not a reading. `-1` alone is a reading. */
export function isLengthStep(written: string): boolean {
  return written.trim().startsWith('+');
}

function tidyLength(written: string): string {
  return written
    .replace(/[¼½¾⅛⅜⅝⅞⅓⅔]/g, (glyph) => ` ${VULGAR_FRACTIONS[glyph]}`)
    .replace(/[”″]|''|’’/g, '"')
    .replace(/⁄/g, '/')
    .replace(/−/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}
