import type { ListItem } from '../list';
import type { ColumnKind } from '../person';

/** Most characters of a text that is taken for a list, and most lines: a list holds no more people (see MOST_PEOPLE). */
export const LONGEST_PASTE = 1_000_000;

/** What a pasted column is taken for. */
export type ColumnUse =
  | { readonly use: 'field'; readonly columnId: string }
  | { readonly use: 'newField'; readonly name: string; readonly kind: ColumnKind }
  | { readonly use: 'size'; readonly garmentId: string }
  | { readonly use: 'quantity' }
  | { readonly use: 'leave' };

/** A pasted table: its cells, and whether its first line names the columns. */
export type PastedTable = {
  readonly rows: readonly (readonly string[])[];
  readonly headings: readonly string[] | null;
};

/** Somebody as a pasted text was understood. Fields are by column id. */
export type PastedPerson = {
  readonly fields: Readonly<Record<string, string>>;
  readonly items: readonly Omit<ListItem, 'itemId'>[];
};

export type PasteRefusal =
  | { readonly reason: 'nothing' | 'tooLong' }
  | { readonly reason: 'tooMany'; readonly lines: number; readonly most: number }
  | { readonly reason: 'cellTooLong'; readonly line: number; readonly most: number };
