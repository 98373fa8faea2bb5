import type { ListItem, ListLine } from './list';

/** What a line says, as one text: two lines that say the same have the same. Meant-so answers and confirmations are no part of it. */
export function lineContent({ fields, items }: Pick<ListLine, 'fields' | 'items'>): string {
  const written = Object.entries(fields)
    .filter(([, text]) => text !== '')
    .toSorted(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify([written, itemsContent(items)]);
}

/** What items ask for, without the ids they happen to have. */
export function itemsContent(items: readonly ListItem[]): string {
  return JSON.stringify(
    items.map(({ garmentId, size, typed, quantity }) => [garmentId, size?.blankId, size?.sizeId, typed, quantity]),
  );
}
