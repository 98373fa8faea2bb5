/** The longest name a print can have. */
export const LONGEST_PRINT_NAME = 80;

/** A print's name as it is kept: NFC, without spaces around it. Null for one that says nothing or is too long. */
export function printName(written: string): string | null {
  const name = written.normalize('NFC').replace(/\s+/g, ' ').trim();
  return name === '' || name.length > LONGEST_PRINT_NAME || !name.isWellFormed() ? null : name;
}

/** A name for a print from the name of its picture's file: without folder and ending. */
export function nameFromFile(fileName: string): string | null {
  const base = fileName.split(/[\\/]/).at(-1) ?? '';
  const bare = base.replace(/\.[a-z0-9]{1,5}$/i, '').replace(/[_]+/g, ' ');
  return printName(bare.slice(0, LONGEST_PRINT_NAME));
}

/** The name of another one like it: `Crest 2` after `Crest`, the first number that no print of the layout has. */
export function nextName(name: string, prints: readonly { readonly name: string }[]): string {
  const taken = new Set(prints.map((print) => print.name));
  const base = name.replace(/ \d{1,3}$/, '');
  for (let number = 2; ; number += 1) {
    const ending = ` ${number}`;
    // A character of two units is not cut in half.
    const start = base.slice(0, LONGEST_PRINT_NAME - ending.length).replace(/[\ud800-\udbff]$/, '');
    const next = `${start.trimEnd()}${ending}`;
    if (!taken.has(next)) return next;
  }
}
