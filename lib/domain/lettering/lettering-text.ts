/** A field in a line of lettering: the id of a column of the list in braces. */
const FIELD = /\{([^{}]+)\}/g;

/** The columns a lettering takes its words from, each once, in the order they stand. Fixed words have none. */
export function fieldsIn(lines: readonly string[]): string[] {
  const found = lines.flatMap((line) => [...line.matchAll(FIELD)].map(([, columnId]) => columnId ?? ''));
  return [...new Set(found)];
}

/** A line with every field replaced by what `fieldFor` gives for its column; NFC, without spaces at its ends. */
export function filledLine(line: string, fieldFor: (columnId: string) => string): string {
  const filled = line.replace(FIELD, (_, columnId: string) => fieldFor(columnId));
  return filled.normalize('NFC').replace(/\s+/g, ' ').trim();
}

/** A column of the list as it is written in a line. */
export function fieldMark(columnId: string): string {
  return `{${columnId}}`;
}

/** Columns and column names that hold numbers (common practice, no source). */
const NUMBER_COLUMN = /^(number|no\.?|nr\.?|num|#|seat|shirt\s*(no|number)|jersey\s*(no|number))$/i;

/** Digits alone, as many as a shirt has room for. */
const SHORT_NUMBER = /^\d{1,3}$/;

/**
 * What stands for a column while nobody's line is looked at: `00` for one of numbers, otherwise its own name in capitals.
 * `values` are what the list has in it.
 */
export function sampleOf(
  column: { readonly columnId: string; readonly name: string; readonly kind?: string | undefined },
  values: readonly string[],
): string {
  const written = values.filter((value) => value.trim() !== '');
  const isNumber =
    column.kind === 'number' ||
    (written.length > 0
      ? written.every((value) => SHORT_NUMBER.test(value.trim()))
      : NUMBER_COLUMN.test(column.name.trim()) || NUMBER_COLUMN.test(column.columnId));
  return isNumber ? '00' : column.name.toUpperCase();
}
