import { folded } from './clean-field';
import type { ListLine, ListSettings } from './list';
import { skeleton } from './look-alikes';
import type { Column } from './person';

/** Lines that say the same in a column; `about` names what they say. */
export type SameAgain = { readonly personIds: readonly string[]; readonly about: string };

/** People with one number within its scope: those who get the same garment, or are of one group. `0` and `00` differ. */
export function numbersTwice(
  lines: readonly ListLine[],
  columns: readonly Column[],
  columnId: string,
  within: ListSettings['numberOnceWithin'],
): SameAgain[] {
  const groups = columns.filter(({ kind }) => kind === 'group').map((column) => column.columnId);
  const scopesOf = ({ fields, items }: ListLine): string[] => {
    if (within === 'group') return [groups.map((id) => folded(fields[id] ?? '')).join('\n')];
    const garments = [...new Set(items.map(({ garmentId }) => garmentId))];
    return garments.length > 0 ? garments : [''];
  };
  const found = together(lines, (line) => {
    const number = folded(line.fields[columnId] ?? '');
    return number === '' ? [] : scopesOf(line).map((scope) => `${number}\n${scope}`);
  });
  // People who share two garments share a number once, not twice.
  const seen = new Set<string>();
  return found
    .map(({ key, personIds }) => ({ personIds, about: sameAbout(key.split('\n')[0] ?? '', personIds) }))
    .filter(({ about }) => !seen.has(about) && seen.add(about));
}

/** People who are called the same, however it is written. */
export function namesTwice(lines: readonly ListLine[], columnId: string): SameAgain[] {
  return together(lines, ({ fields }) => nonEmpty(folded(fields[columnId] ?? ''))).map(({ key, personIds }) => ({
    personIds,
    about: sameAbout(key, personIds),
  }));
}

/** People whose names differ and still cannot be told apart by looking. */
export function namesAlike(lines: readonly ListLine[], columnId: string): SameAgain[] {
  const nameOf = new Map(lines.map(({ personId, fields }) => [personId, folded(fields[columnId] ?? '')]));
  return together(lines, ({ fields }) => nonEmpty(skeleton(spaced(fields[columnId] ?? ''))))
    .filter(({ personIds }) => new Set(personIds.map((id) => nameOf.get(id))).size > 1)
    .map(({ key, personIds }) => ({ personIds, about: sameAbout(key, personIds) }));
}

/** As it is written, compatible forms and spaces alike: capitals look unlike the small letters of another script. */
function spaced(text: string): string {
  return text.normalize('NFKC').replace(/\s+/gu, ' ').trim();
}

function nonEmpty(text: string): string[] {
  return text === '' ? [] : [text];
}

/** It is meant so of just these people: one more of them is something new. */
function sameAbout(what: string, personIds: readonly string[]): string {
  return `${what} ${personIds.length}`;
}

function together(
  lines: readonly ListLine[],
  keysOf: (line: ListLine) => readonly string[],
): { key: string; personIds: string[] }[] {
  const found = new Map<string, string[]>();
  for (const line of lines) {
    for (const key of keysOf(line)) found.set(key, [...(found.get(key) ?? []), line.personId]);
  }
  return [...found].filter(([, personIds]) => personIds.length > 1).map(([key, personIds]) => ({ key, personIds }));
}
