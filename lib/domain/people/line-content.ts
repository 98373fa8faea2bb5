import type { ListItem, ListLine } from './list';

/** What a line says, as one text: two lines that say the same have the same. Meant-so answers and confirmations are no part of it. */
export function lineContent({ fields, items }: Pick<ListLine, 'fields' | 'items'>): string {
  const written = Object.entries(fields)
    .filter(([, text]) => text !== '')
    .toSorted(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify([written, itemsContent(items)]);
}

/** What items ask for, garment by garment, without the ids they happen to have. */
export function itemsContent(items: readonly ListItem[]): string {
  return JSON.stringify(
    items
      .toSorted((a, b) => (a.garmentId < b.garmentId ? -1 : Number(a.garmentId > b.garmentId)))
      .map(({ garmentId, size, typed, quantity }) => [garmentId, size?.blankId, size?.sizeId, typed, quantity]),
  );
}
