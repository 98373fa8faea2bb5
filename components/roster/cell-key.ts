/** Where a key leads from a cell. */
export type Move = 'up' | 'down' | 'left' | 'right';

type PressedKey = {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
};
type Caret = {
  readonly selectionStart: number | null;
  readonly selectionEnd: number | null;
  readonly value: string;
};

/**
 * What a key pressed in a cell is for; null where it belongs to the text. Up, down and Enter always leave the cell; left and
 * right do at its ends, and while all of it is chosen, as it is when it is come to. Undo is the text's own while it is typed.
 */
export function cellKey(
  pressed: PressedKey,
  caret: Caret,
  isTyping: boolean,
): Move | 'revert' | 'undo' | 'redo' | null {
  const { key, shiftKey } = pressed;
  if (key === 'Enter') return shiftKey ? 'up' : 'down';
  if (key === 'Escape') return isTyping ? 'revert' : null;
  if (pressed.ctrlKey || pressed.metaKey || pressed.altKey) return isTyping ? null : undoKey(pressed);
  return shiftKey ? null : arrowKey(key, caret);
}

function undoKey({ key, altKey, shiftKey }: PressedKey): 'undo' | 'redo' | null {
  const letter = altKey ? '' : key.toLowerCase();
  if (letter === 'y') return 'redo';
  if (letter !== 'z') return null;
  return shiftKey ? 'redo' : 'undo';
}

function arrowKey(key: string, { selectionStart, selectionEnd, value }: Caret): Move | null {
  const isAll = selectionStart === 0 && selectionEnd === value.length;
  switch (key) {
    case 'ArrowUp':
      return 'up';
    case 'ArrowDown':
      return 'down';
    case 'ArrowLeft':
      return isAll || selectionEnd === 0 ? 'left' : null;
    case 'ArrowRight':
      return isAll || selectionStart === value.length ? 'right' : null;
    default:
      return null;
  }
}
