import type { KeyboardEvent } from 'react';
import { removePrint } from '@/lib/editor/commands/change-print';
import { nudgePrint } from '@/lib/editor/commands/place-print';
import { nudgeOf, REDO_STROKES, strokeText, UNDO_STROKES } from '@/lib/editor/key-strokes';
import { afterCommand, afterRedo, afterUndo } from '@/lib/editor/table-editor';
import type { Change } from './use-reading';

/**
 * Keys of the whole table: back and forth anywhere but in text that is being typed; arrows and Delete act on the print in
 * hand while the paper or a slip has the focus.
 */
export function tableKeys(change: Change): (event: KeyboardEvent<HTMLElement>) => void {
  return (event) => {
    const target = event.target as HTMLElement;
    const stroke = strokeText(event);
    const isTyping = target.matches('textarea, input[data-typed]');
    if (!isTyping && UNDO_STROKES.includes(stroke)) return run(event, () => change(afterUndo));
    if (!isTyping && REDO_STROKES.includes(stroke)) return run(event, () => change(afterRedo));
    if (!target.matches('[data-nudges]')) return;
    const nudge = nudgeOf(stroke);
    // A key held down is one long nudge.
    const isHeld = event.repeat;
    if (nudge) run(event, () => change((editor) => afterCommand(editor, nudgePrint, nudge, isHeld)));
    else if (removePrint.keys.includes(stroke)) {
      run(event, () => change((editor) => afterCommand(editor, removePrint, undefined)));
    }
  };
}

function run(event: KeyboardEvent, act: () => void): void {
  event.preventDefault();
  act();
}
