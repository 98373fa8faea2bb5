import { LONGEST_LETTERING_LINE, MOST_LETTERING_LINES } from '@/lib/domain/lettering/lettering';

/** What was written as lettering, line by line, or why it cannot be set. */
export type WrittenLines =
  | { readonly ok: true; readonly lines: string[] }
  | { readonly ok: false; readonly reason: 'nothing' | 'tooManyLines' | 'tooLong' | 'notText' };

/** Control characters, and what only steers other characters: nothing of it prints. A joiner between letters stays. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const UNPRINTED = /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u200B\u2028\u2029\uFEFF]/g;

/** The lines of lettering as a maker wrote them: NFC, without what does not print, without empty ones at the end. */
export function writtenLines(written: string): WrittenLines {
  if (!written.isWellFormed()) return { ok: false, reason: 'notText' };
  const lines = written
    .replace(/\r\n?/g, '\n')
    .replaceAll('\t', ' ')
    .replace(UNPRINTED, '')
    .normalize('NFC')
    .split('\n');
  while (lines.length > 0 && lines.at(-1)?.trim() === '') lines.pop();
  if (lines.length === 0) return { ok: false, reason: 'nothing' };
  if (lines.length > MOST_LETTERING_LINES) return { ok: false, reason: 'tooManyLines' };
  if (lines.some(({ length }) => length > LONGEST_LETTERING_LINE)) return { ok: false, reason: 'tooLong' };
  return { ok: true, lines };
}
