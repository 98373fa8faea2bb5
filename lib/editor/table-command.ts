import { type Command, type CommandRefusal, refusalOf } from './command';
import { REDO_STROKES, UNDO_STROKES } from './key-strokes';
import type { SelectionStep } from './selection-steps';
import { afterCommand, afterRedo, afterUndo, type TableEditor, tableState, withSelection } from './table-editor';

/** Under which heading a command is listed. */
export const COMMAND_SECTIONS = ['place', 'size', 'order', 'more', 'looking', 'back'] as const;
export type CommandSection = (typeof COMMAND_SECTIONS)[number];

/** What a command is handed when it runs. `continues`: its key is held down, so that all of it is undone in one go. */
export type Running = { readonly newId: () => string; readonly continues?: boolean };

/**
 * One thing that can be done at the table, ready to run: on a button, a menu, a key or from the list of all of them. Each
 * asks the same `refusal` first: why it cannot run now, or null.
 */
export type TableCommand<Id extends string = string> = {
  readonly id: Id;
  readonly section: CommandSection;
  readonly keys: readonly string[];
  /** Whether its keys work anywhere on the page; otherwise while the paper or a slip has the focus. */
  readonly anywhere?: true;
  /** Whether it may find nothing left to change although it may run: what it does is so already. */
  readonly canBeIdle?: true;
  readonly refusal: (editor: TableEditor) => CommandRefusal | null;
  readonly run: (editor: TableEditor, running: Running) => TableEditor;
};

type About<Id extends string> = Pick<TableCommand<Id>, 'id' | 'section' | 'canBeIdle'> & {
  readonly keys?: readonly string[];
};

/** An edit of the layout, with what it is given. Its keys are the command's own unless others are named. */
export function editing<Id extends string, Arguments>(
  about: About<Id>,
  command: Command<Arguments>,
  args: (running: Running) => NoInfer<Arguments>,
): TableCommand<Id> {
  return {
    ...about,
    keys: about.keys ?? command.keys,
    refusal: (editor) => refusalOf(command, tableState(editor)),
    run: (editor, running) => afterCommand(editor, command, args(running), running.continues ?? false),
  };
}

/** A step to something else on the table; `alone` says that there is no other. */
export function looking<Id extends string>(
  about: About<Id> & { readonly keys: readonly string[] },
  step: SelectionStep,
  alone: CommandRefusal,
): TableCommand<Id> {
  return {
    ...about,
    refusal: ({ history, selection }) => {
      if (!selection) return 'noGarment';
      return step(history.present, selection) === null ? alone : null;
    },
    run: (editor) => withSelection(editor, (layout, selection) => step(layout, selection) ?? selection),
  };
}

/** A working aid switched on or off for the print in hand. */
export function aiding<Id extends string>(
  about: About<Id> & { readonly keys: readonly string[] },
  switched: (editor: TableEditor, printId: string) => TableEditor,
): TableCommand<Id> {
  return {
    ...about,
    refusal: ({ selection, locked }) => {
      if (locked) return 'signedOff';
      return selection?.printId ? null : 'noPrint';
    },
    run: (editor) => (editor.selection?.printId ? switched(editor, editor.selection.printId) : editor),
  };
}

/** Back through what was done. */
export const undo: TableCommand<'undo'> = {
  id: 'undo',
  section: 'back',
  keys: UNDO_STROKES,
  anywhere: true,
  refusal: ({ history, locked }) => (locked ? 'signedOff' : history.past.length === 0 ? 'nothingToUndo' : null),
  run: afterUndo,
};

/** Forth through what was undone. */
export const redo: TableCommand<'redo'> = {
  id: 'redo',
  section: 'back',
  keys: REDO_STROKES,
  anywhere: true,
  refusal: ({ history, locked }) => (locked ? 'signedOff' : history.future.length === 0 ? 'nothingToRedo' : null),
  run: afterRedo,
};
