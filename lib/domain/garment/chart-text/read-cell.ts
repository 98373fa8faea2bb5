import { LONGEST_LENGTH_UM, type Micrometres } from '../../measure/length';
import { parseLength } from '../../measure/parse-length';
import { DEAREST_MINOR } from '../blank-style';
import type { ChartFault, WrittenUnit } from './chart-reading';
import { bareNumber, numberUnit } from './chart-unit';

/** What a cell says: a number in a unit, nothing, or why it is no length. */
export type ReadCell<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly code: ChartFault['code'] };

/** Cells that say nothing: what charts write where a size has no such measure. */
const NOTHING = /^(|[-–—.]+|n\/?a\.?|tbc|tba)$/i;

/** True for a cell that says nothing. */
export function saysNothing(cell: string): boolean {
  return NOTHING.test(cell);
}

/** True for a cell that holds a length, right or wrong. */
export function holdsLength(cell: string): boolean {
  return !saysNothing(cell) && lengthOf(cell, 'cm').ok;
}

/** True for a cell that holds a number as a length is written, be it one that no length can be. */
export function holdsNumber(cell: string): boolean {
  if (saysNothing(cell)) return false;
  const read = lengthOf(cell, 'cm');
  return read.ok || read.code !== 'notALength';
}

/** Parts of an inch that are on tapes or in tables; `34/36` and `46/18` are two numbers. */
const FRACTION = /\d\s*[/⁄]\s*(\d+)/;
const PARTS: ReadonlySet<string> = new Set(['2', '3', '4', '5', '8', '10', '16', '32', '64']);

/** The length a cell stands for, bare numbers being in `unit`. */
export function lengthOf(cell: string, unit: WrittenUnit): ReadCell<Micrometres> {
  const parts = FRACTION.exec(cell)?.[1];
  if (parts !== undefined && !PARTS.has(parts)) return { ok: false, code: 'notALength' };
  const parsed = parseLength(`${bareNumber(cell)} ${numberUnit(cell) ?? unit}`, 'in');
  if (!parsed.ok) return { ok: false, code: parsed.reason === 'tooLong' ? 'outOfRange' : 'notALength' };
  if (parsed.um < 0) return { ok: false, code: 'negative' };
  if (parsed.um === 0) return { ok: false, code: 'zero' };
  return parsed.um > LONGEST_LENGTH_UM ? { ok: false, code: 'outOfRange' } : { ok: true, value: parsed.um };
}

/** Signs of a currency before or behind an amount: `£`, `US$`, `EUR`, `kr`. */
const CURRENCY = /^\p{L}{0,3}\p{Sc}?\s*(?=\d)|(?<=\d)\s*\p{Sc}?\p{L}{0,3}\.?$/gu;
/** Thousands are told from decimals only where both stand there: `1,234.50`, `1 234,50`. */
const THOUSANDS = /^\d{1,3}(?:([,. '’])\d{3})(?:\1\d{3})*(?!\1)[.,]\d{1,2}$/;

/** An amount with at most two decimals, whatever sign of a currency stands beside it, in hundredths. */
export function costOf(cell: string): ReadCell<number> {
  const bare = cell.replace(CURRENCY, '');
  const parting = THOUSANDS.exec(bare)?.[1];
  const amount = /^(\d{1,7})(?:[.,](\d{1,2}))?$/.exec(parting ? bare.replaceAll(parting, '') : bare);
  const hundredths = Number(amount?.[1] ?? Number.NaN) * 100 + Number((amount?.[2] ?? '0').padEnd(2, '0'));
  return hundredths <= DEAREST_MINOR ? { ok: true, value: hundredths } : { ok: false, code: 'notACost' };
}
