import { LONGEST_LENGTH_UM, type Micrometres } from '../../measure/length';
import { parseLength } from '../../measure/parse-length';
import { DEAREST_MINOR } from '../blank-style';
import type { ChartFault, WrittenUnit } from './chart-reading';
import { numberUnit } from './chart-unit';

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

/** The length a cell stands for, bare numbers being in `unit`. */
export function lengthOf(cell: string, unit: WrittenUnit): ReadCell<Micrometres> {
  const parsed = parseLength(numberUnit(cell) ? cell : `${cell} ${unit}`, 'in');
  if (!parsed.ok) return { ok: false, code: parsed.reason === 'tooLong' ? 'outOfRange' : 'notALength' };
  if (parsed.um < 0) return { ok: false, code: 'negative' };
  if (parsed.um === 0) return { ok: false, code: 'zero' };
  return parsed.um > LONGEST_LENGTH_UM ? { ok: false, code: 'outOfRange' } : { ok: true, value: parsed.um };
}

/** An amount with at most two decimals, whatever sign of a currency stands beside it, in hundredths. */
export function costOf(cell: string): ReadCell<number> {
  const amount = /^(\d{1,7})(?:[.,](\d{1,2}))?$/.exec(
    cell.replace(/^\p{Sc}|\p{Sc}$|^[A-Z]{3}\b|\b[A-Z]{3}$/u, '').trim(),
  );
  const hundredths = Number(amount?.[1] ?? Number.NaN) * 100 + Number((amount?.[2] ?? '0').padEnd(2, '0'));
  return hundredths <= DEAREST_MINOR ? { ok: true, value: hundredths } : { ok: false, code: 'notACost' };
}
