import Papa from 'papaparse';
import { cleanPasted } from '../clean-field';
import { readItems } from '../items-text';
import { type GarmentOnOffer, garmentOfPlace, type ListItem, type ListLine } from '../list';
import type { ListEdit } from '../list-edit';
import { LONGEST_FIELD, MOST_PEOPLE } from '../person';

/** Where a block is pasted: the lines below the cell as they are shown, and the places from it to the right. */
export type BlockTarget = {
  /** The line of the cell first; the last may be one that is not on the list yet. */
  readonly lines: readonly ListLine[];
  readonly isNew: (personId: string) => boolean;
  readonly places: readonly string[];
  readonly garments: readonly GarmentOnOffer[];
  readonly newId: () => string;
  /** How many more people the list takes. */
  readonly room: number;
};

/**
 * The changes that write a pasted block into the cells from one on, to the right and down, with new lines where it goes
 * beyond the last. Null where it is wider than there are cells, or more or longer than a list holds: then it cannot be meant
 * for these cells alone.
 */
export function blockEdits(text: string, target: BlockTarget): ListEdit[] | null {
  const rows = Papa.parse<string[]>(text.replace(/[\r\n]+$/u, ''), { delimiter: '\t' }).data.map((row) =>
    row.map(cleanPasted),
  );
  const width = Math.max(...rows.map((row) => row.length));
  const more = rows.length - target.lines.filter(({ personId }) => !target.isNew(personId)).length;
  if (width > target.places.length || more > target.room || rows.length > MOST_PEOPLE) return null;
  if (rows.some((row) => row.some((cell) => cell.length > LONGEST_FIELD))) return null;
  return rows.flatMap((row, at): ListEdit[] => {
    const line = target.lines[at];
    if (line && !target.isNew(line.personId)) return row.flatMap((cell, right) => cellEdit(line, cell, right, target));
    const personId = line?.personId ?? target.newId();
    const written = newLine(row, target);
    return written === null ? [] : [{ edit: 'add', line: { personId, ...written, meant: [] }, before: null }];
  });
}

function cellEdit(line: ListLine, text: string, right: number, { places, garments, newId }: BlockTarget): ListEdit[] {
  const place = places[right];
  const { personId } = line;
  if (place === undefined) return [];
  const garment = garments.find(({ garmentId }) => garmentId === garmentOfPlace(place));
  if (!garment) return [{ edit: 'field', personId, columnId: place, was: line.fields[place] ?? '', text }];
  const { garmentId } = garment;
  const was = line.items.filter((item) => item.garmentId === garmentId);
  return [{ edit: 'items', personId, garmentId, was, items: readItems(text, garment, was, newId) }];
}

function newLine(
  row: readonly string[],
  { places, garments, newId }: BlockTarget,
): { fields: Record<string, string>; items: ListItem[] } | null {
  if (row.every((cell) => cell === '')) return null;
  const fields: Record<string, string> = {};
  const items = row.flatMap((cell, right) => {
    const place = places[right] ?? '';
    const garment = garments.find(({ garmentId }) => garmentId === garmentOfPlace(place));
    if (garment) return readItems(cell, garment, [], newId);
    if (cell !== '') fields[place] = cell;
    return [];
  });
  return { fields, items };
}
