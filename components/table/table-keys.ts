import type { KeyboardEvent } from 'react';
import { strokeText } from '@/lib/editor/key-strokes';
import { commandForStroke } from '@/lib/editor/table-commands';
import type { PageAct } from './page-acts';
import type { Perform } from './use-table-commands';

/** The stroke that lists every command. */
export const LIST_STROKES: readonly string[] = ['Shift+?', '?'];

/**
 * Keys of the whole table: back, forth and the list of commands anywhere but in text that is being typed; the others while
 * the paper or a slip has the focus.
 */
export function tableKeys(
  perform: Perform,
  acts: readonly PageAct[],
  onList: () => void,
): (event: KeyboardEvent<HTMLElement>) => void {
  return (event) => {
    const target = event.target as HTMLElement;
    const stroke = strokeText(event);
    const isField = target.matches('input:not([type="checkbox"], [type="radio"]), textarea, select');
    if (!isField && LIST_STROKES.includes(stroke)) {
      event.preventDefault();
      onList();
      return;
    }
    const act = target.matches('[data-nudges]') && acts.find(({ keys, refusal }) => !refusal && keys.includes(stroke));
    if (act) {
      event.preventDefault();
      act.run();
      return;
    }
    const command = commandForStroke(stroke);
    if (!command) return;
    const works = command.anywhere ? !target.matches('textarea, input[data-typed]') : target.matches('[data-nudges]');
    if (!works) return;
    event.preventDefault();
    perform(command, event.repeat);
  };
}
