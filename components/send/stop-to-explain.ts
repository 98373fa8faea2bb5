/** A print that cannot be pressed as it lies, to be mended or explained. */
export type StopToExplain = {
  /** Name of the field its note is typed into. */
  readonly field: string;
  readonly print: string;
  /** What it does, one sentence for sizes that share it. */
  readonly sentences: readonly string[];
  /** Address of the layout table. */
  readonly table: string;
  /** What was written last time. */
  readonly note: string;
};

const FIELD = 'fitNote-';

/** The name of the field for a print's note. */
export function fitNoteField(printId: string): string {
  return `${FIELD}${printId}`;
}

/** The print a field's note is about; null for any other field. */
export function printOfField(field: string): string | null {
  return field.startsWith(FIELD) ? field.slice(FIELD.length) : null;
}
