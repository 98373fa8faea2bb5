/** Longest name a picture keeps. */
const LONGEST_NAME = 120;

/** A file's name as a label: without folders, control characters and needless space; never empty. */
export function tidyFileName(name: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? '';
  const tidy = last.normalize('NFC').replace(/\p{C}/gu, ' ').replace(/\s+/g, ' ').trim();
  return Array.from(tidy).slice(0, LONGEST_NAME).join('').trim() || '–';
}
