import { refusalMark } from './kept-tables';

// Errors are known by their code and text, never by class: the page bundle and the server around it each have a copy of the
// client, and an error of one is no instance of the other's class.

function codeOf(error: unknown): unknown {
  return error instanceof Error && 'code' in error ? error.code : undefined;
}

function driverTextOf(error: unknown): string {
  if (!(error instanceof Error)) return '';
  const meta = 'meta' in error ? JSON.stringify(error.meta) : '';
  return `${error.message} ${meta}`;
}

/** Whether a write was refused because a row with the same unique value is there already. */
export function isUniqueClash(error: unknown): boolean {
  return codeOf(error) === 'P2002';
}

/** Whether a write was refused because it would have changed, removed or replaced a kept row. */
export function isKeptRowRefusal(error: unknown): boolean {
  return driverTextOf(error).includes(refusalMark);
}
