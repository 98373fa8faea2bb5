import type { LayoutDocument } from '@/lib/domain/layout/document';
import { restacked } from '@/lib/domain/layout/stack';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import { type LengthUnit, tradeStepUm } from '@/lib/domain/measure/length';
import type { Command, EditLabel, TableState } from './command';
import { type History, newHistory, recorded, redone, undone } from './history';
import { firstSelection, followedSelection, type Selection, settledSelection } from './selection';

/**
 * The table while it is worked at. `held` is the layout as a drag in progress would leave it: shown, but neither saved nor
 * in the history until the pointer lets go. `hidden` and `pinned` (print ids) are working aids of this table: nobody agrees
 * to them, so they are no part of the document that is saved and sealed. No more are `type`, what lettering is set from
 * once its fonts are open, and `personId`, whose words are looked at (null for samples).
 */
export type TableEditor = {
  readonly history: History;
  readonly held: LayoutDocument | null;
  readonly selection: Selection | null;
  readonly hidden: readonly string[];
  readonly pinned: readonly string[];
  readonly unit: LengthUnit;
  readonly locked: boolean;
  readonly type: TypeCase | null;
  readonly personId: string | null;
};

/** A table laid out with a layout for the first time. */
export function newTableEditor(layout: LayoutDocument, unit: LengthUnit, locked: boolean): TableEditor {
  const selection = firstSelection(layout);
  const aids = { hidden: [], pinned: [], type: null, personId: null };
  return { history: newHistory(layout), held: null, selection, ...aids, unit, locked };
}

/** What commands are asked about: the layout as it stands, without a drag in progress. */
export function tableState({ history, selection, pinned, unit, locked, type, personId }: TableEditor): TableState {
  return { layout: history.present, selection, pinned, unit, locked, type, personId };
}

/** The whole layout as it looks now: with the drag in progress, if there is one, and with the hidden prints. */
export function wholeLayout({ history, held }: TableEditor): LayoutDocument {
  return held ?? history.present;
}

/** The layout as the paper shows it: the same without the prints that are hidden while working. */
export function shownLayout(editor: TableEditor): LayoutDocument {
  return withoutHidden(wholeLayout(editor), editor.hidden);
}

const bared = new WeakMap<readonly string[], WeakMap<LayoutDocument, LayoutDocument>>();

/** Kept by reference, so that what is drawn from it is drawn again only when something changed. */
function withoutHidden(layout: LayoutDocument, hidden: readonly string[]): LayoutDocument {
  if (!layout.prints.some(({ printId }) => hidden.includes(printId))) return layout;
  const known = bared.get(hidden) ?? new WeakMap<LayoutDocument, LayoutDocument>();
  bared.set(hidden, known);
  const already = known.get(layout);
  if (already) return already;
  const shown = { ...layout, prints: layout.prints.filter(({ printId }) => !hidden.includes(printId)) };
  known.set(layout, shown);
  return shown;
}

/** The table after a command; the very same table when it cannot run or changes nothing. `continues`: see `recorded`. */
export function afterCommand<Arguments>(
  editor: TableEditor,
  command: Command<Arguments>,
  args: Arguments,
  continues = false,
): TableEditor {
  const state = tableState(editor);
  if (!command.canRun(state)) return editor;
  return withLayout(editor, laidOut(state, command, args), command.id, continues);
}

/** The table while a drag goes on: what the command would do is shown and not yet done. */
export function whileDragging<Arguments>(
  editor: TableEditor,
  command: Command<Arguments>,
  args: Arguments,
): TableEditor {
  const state = tableState(editor);
  if (!command.canRun(state)) return editor;
  const held = laidOut(state, command, args);
  return held === wholeLayout(editor) ? editor : { ...editor, held };
}

/** What a command makes of the layout, prints that keep under another following it. */
function laidOut<Arguments>(state: TableState, command: Command<Arguments>, args: Arguments): LayoutDocument {
  return restacked(state.layout, command.run(state, args), tradeStepUm(state.unit), state.type);
}

/** The table when the drag is let go: what was shown is done, as one step. */
export function afterDrag(editor: TableEditor, label: EditLabel): TableEditor {
  if (!editor.held) return editor;
  return withLayout({ ...editor, held: null }, editor.held, label);
}

/** The table when the drag is given up: as if it had not begun. */
export function withoutDrag(editor: TableEditor): TableEditor {
  return editor.held ? { ...editor, held: null } : editor;
}

/** One edit back. Nothing on a signed-off layout, or when nothing was done. */
export function afterUndo(editor: TableEditor): TableEditor {
  return editor.locked ? editor : withHistory(editor, undone(editor.history));
}

/** One undone edit forth. */
export function afterRedo(editor: TableEditor): TableEditor {
  return editor.locked ? editor : withHistory(editor, redone(editor.history));
}

/** The layout somebody else saved, taken over as a step of its own, so that one's own can still be had back by undoing. */
export function afterTakingTheirs(editor: TableEditor, theirs: LayoutDocument): TableEditor {
  return withLayout(withoutDrag(editor), theirs, 'takeTheirs');
}

/** Other things in hand on the table; not an edit. */
export function withSelection(
  editor: TableEditor,
  select: (layout: LayoutDocument, selection: Selection) => Selection,
): TableEditor {
  if (!editor.selection) return editor;
  const selection = settledSelection(editor.history.present, select(editor.history.present, editor.selection));
  return selection === editor.selection ? editor : { ...editor, held: null, selection };
}

/** The table with fonts opened, or with another list to set words from. */
export function withType(editor: TableEditor, type: TypeCase | null): TableEditor {
  return type === editor.type ? editor : { ...editor, type };
}

/** The table with somebody's words looked at; nobody's are samples. Not an edit. */
export function withPersonLookedAt(editor: TableEditor, personId: string | null): TableEditor {
  return personId === editor.personId ? editor : { ...editor, held: null, personId };
}

/** The table with the layout signed off, or opened again. */
export function withLock(editor: TableEditor, locked: boolean): TableEditor {
  return locked === editor.locked ? editor : { ...editor, held: null, locked };
}

function withLayout(editor: TableEditor, layout: LayoutDocument, label: EditLabel, continues = false): TableEditor {
  return withHistory(editor, recorded(editor.history, layout, label, continues));
}

function withHistory(editor: TableEditor, history: History): TableEditor {
  if (history === editor.history) return editor;
  const followed = followedSelection(editor.history.present, history.present, editor.selection);
  return { ...editor, history, held: null, selection: settledSelection(history.present, followed) };
}
