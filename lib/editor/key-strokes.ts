/** A key press as a browser reports it. */
export type KeyPress = {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
};

/** A key press in one notation: `Mod+Shift+Z`, `Shift+ArrowUp`. Mod is Control, or Command on a Mac. */
export function strokeText({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyPress): string {
  const name = key.length === 1 ? key.toUpperCase() : key;
  return [(ctrlKey || metaKey) && 'Mod', altKey && 'Alt', shiftKey && 'Shift', name].filter(Boolean).join('+');
}

/** Key strokes that go back and forth through what was done. */
export const UNDO_STROKES: readonly string[] = ['Mod+Z'];
export const REDO_STROKES: readonly string[] = ['Mod+Shift+Z', 'Mod+Y'];
