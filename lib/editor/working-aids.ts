import type { TableEditor } from './table-editor';

/** Whether a print is hidden on this table while working. */
export function isHidden({ hidden }: Pick<TableEditor, 'hidden'>, printId: string): boolean {
  return hidden.includes(printId);
}

/** Whether a print is pinned on this table, so that nothing moves, sizes or turns it. */
export function isPinned({ pinned }: Pick<TableEditor, 'pinned'>, printId: string): boolean {
  return pinned.includes(printId);
}

/** The table with a print hidden, or shown again. A drag in progress is given up. */
export function withHidden(editor: TableEditor, printId: string, hide: boolean): TableEditor {
  return { ...editor, held: null, hidden: withMember(editor.hidden, printId, hide) };
}

/** The table with every print shown. */
export function withAllShown(editor: TableEditor): TableEditor {
  return editor.hidden.length === 0 ? editor : { ...editor, held: null, hidden: [] };
}

/** The table with a print pinned, or loose again. A drag in progress is given up. */
export function withPinned(editor: TableEditor, printId: string, pin: boolean): TableEditor {
  return { ...editor, held: null, pinned: withMember(editor.pinned, printId, pin) };
}

function withMember(ids: readonly string[], id: string, isIn: boolean): readonly string[] {
  return isIn === ids.includes(id) ? ids : isIn ? [...ids, id] : ids.filter((each) => each !== id);
}
