import { fitsField } from '../clean-field';
import { readItems } from '../items-text';
import type { GarmentOnOffer } from '../list';
import type { Column } from '../person';
import { LONGEST_FIELD, MOST_OF_ONE_ITEM, MOST_PEOPLE } from '../person';
import { peopleInMessage } from './paste-message';
import { pastedTable } from './paste-table';
import { type ColumnUse, LONGEST_PASTE, type PastedPerson, type PastedTable, type PasteRefusal } from './pasted';

/** What a pasted text was taken for. A table's columns can still be meant for something else than was guessed. */
export type ReadPaste =
  | { readonly ok: true; readonly kind: 'table'; readonly table: PastedTable }
  | { readonly ok: true; readonly kind: 'message'; readonly people: readonly PastedPerson[] }
  | ({ readonly ok: false } & PasteRefusal);

/** Reads a block of a spreadsheet, a CSV file or a text message as people; `room` is how many more a list can take. */
export function readPaste(
  text: string,
  columns: readonly Column[],
  garments: readonly GarmentOnOffer[],
  room: number = MOST_PEOPLE,
): ReadPaste {
  if (text.length > LONGEST_PASTE) return { ok: false, reason: 'tooLong' };
  if (text.trim() === '') return { ok: false, reason: 'nothing' };
  const table = pastedTable(text, columns, garments);
  const people = table ? [] : messagePeople(text, columns, garments);
  const count = table ? table.rows.length : people.length;
  if (count === 0) return { ok: false, reason: 'nothing' };
  if (count > room) return { ok: false, reason: 'tooMany', lines: count, most: room };
  const cells = table ? table.rows : people.map(({ fields }) => Object.values(fields));
  const longAt = cells.findIndex((row) => !row.every(fitsField));
  if (longAt >= 0) return { ok: false, reason: 'cellTooLong', line: longAt + 1, most: LONGEST_FIELD };
  return table ? { ok: true, kind: 'table', table } : { ok: true, kind: 'message', people };
}

/** The people of a pasted table, its columns used as `uses` says; lines that say nothing in those columns are left out. */
export function peopleOfTable(
  { rows }: PastedTable,
  uses: readonly ColumnUse[],
  columnIdOf: (use: Extract<ColumnUse, { use: 'newField' }>) => string,
  garments: readonly GarmentOnOffer[],
): PastedPerson[] {
  return rows
    .map((row): PastedPerson => {
      const fields: Record<string, string> = {};
      const quantity = quantityOf(row[uses.findIndex(({ use }) => use === 'quantity')]);
      const items = uses.flatMap((use, at) => {
        const text = row[at] ?? '';
        if (text === '') return [];
        if (use.use === 'field') fields[use.columnId] = text;
        if (use.use === 'newField') fields[columnIdOf(use)] = text;
        return use.use === 'size' ? itemsOf(text, use.garmentId, garments, quantity) : [];
      });
      return { fields, items };
    })
    .filter(({ fields, items }) => items.length > 0 || Object.values(fields).some((text) => text !== ''));
}

function messagePeople(text: string, columns: readonly Column[], garments: readonly GarmentOnOffer[]): PastedPerson[] {
  const idOf = (kind: 'name' | 'number') => columns.find((column) => column.kind === kind)?.columnId;
  const [nameId, numberId] = [idOf('name'), idOf('number')];
  const [garment] = garments;
  return peopleInMessage(text, garments).map(({ name, number, size, quantity }) => ({
    fields: {
      ...(nameId && name !== '' ? { [nameId]: name } : {}),
      ...(numberId && number !== '' ? { [numberId]: number } : {}),
    },
    items: garment && size !== '' ? itemsOf(size, garment.garmentId, garments, quantity) : [],
  }));
}

function itemsOf(
  text: string,
  garmentId: string,
  garments: readonly GarmentOnOffer[],
  quantity: number,
): PastedPerson['items'] {
  const garment = garments.find((each) => each.garmentId === garmentId);
  if (!garment) return [];
  const items = readItems(text, garment, [], () => '');
  return items.map(({ itemId: _itemId, ...item }) => ({
    ...item,
    quantity: Math.min(item.quantity * quantity, MOST_OF_ONE_ITEM),
  }));
}

function quantityOf(cell: string | undefined): number {
  const count = Number(cell ?? '1');
  return Number.isInteger(count) && count >= 1 && count <= MOST_OF_ONE_ITEM ? count : 1;
}
