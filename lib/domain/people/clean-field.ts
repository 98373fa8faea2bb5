import { LONGEST_FIELD } from './person';

/** Breaks of lines and other white controls: a cell is one line. */
const BREAKS = /[\t\n\v\f\r\u0085\u2028\u2029]+/gu;
/** Controls that say nothing to a reader and that a database may refuse; joiners and marks of direction are kept. */
const CONTROLS = /\p{Cc}|[\ufffe\uffff]/gu;

/**
 * What is kept of a text written into a cell: NFC (Unicode Standard Annex 15), one line, without control characters and
 * halves of characters. Spaces, invisible characters and look-alikes stay: the checks show them.
 */
export function cleanField(text: string): string {
  return text.toWellFormed().replace(BREAKS, ' ').replace(CONTROLS, '').normalize('NFC');
}

/** The same for a cell that was pasted: a spreadsheet's cells often end in a space or a break of line. */
export function cleanPasted(text: string): string {
  return cleanField(text).trim();
}

/** Whether a cell can hold the text. */
export function fitsField(text: string): boolean {
  return text.length <= LONGEST_FIELD;
}

/** A text as it is compared where writing does not matter: compatible forms alike, small letters, single spaces. */
export function folded(text: string): string {
  return text.normalize('NFKC').toLowerCase().replace(/\s+/gu, ' ').trim();
}
