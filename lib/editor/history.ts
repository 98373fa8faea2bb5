import type { LayoutDocument } from '@/lib/domain/layout/document';
import type { EditLabel } from './command';

/** A layout that was left, with what was done to leave it. */
export type HistoryStep = { readonly layout: LayoutDocument; readonly label: EditLabel };

/**
 * What was done at the table, oldest first, and what was undone, next first. Layouts are never changed in place, so each
 * step is the document itself. `present` is what is on the table.
 */
export type History = {
  readonly past: readonly HistoryStep[];
  readonly present: LayoutDocument;
  readonly future: readonly HistoryStep[];
};

/** How many edits can be undone; a long evening's work (common practice, no source). */
export const MOST_STEPS = 300;

/** The history of a table nobody has worked at yet. */
export function newHistory(present: LayoutDocument): History {
  return { past: [], present, future: [] };
}

/**
 * The history after an edit. What was undone before is let go. With `continues`, an edit of the same label joins the step
 * before it: one long press of an arrow key is undone in one go.
 */
export function recorded(history: History, layout: LayoutDocument, label: EditLabel, continues = false): History {
  if (layout === history.present) return history;
  const joins = continues && history.future.length === 0 && history.past.at(-1)?.label === label;
  const past = joins ? history.past : [...history.past, { layout: history.present, label }].slice(-MOST_STEPS);
  return { past, present: layout, future: [] };
}

/** One edit back; the same history when there is none. */
export function undone(history: History): History {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    past: history.past.slice(0, -1),
    present: step.layout,
    future: [{ layout: history.present, label: step.label }, ...history.future],
  };
}

/** One undone edit forth; the same history when there is none. */
export function redone(history: History): History {
  const [step, ...future] = history.future;
  if (!step) return history;
  return { past: [...history.past, { layout: history.present, label: step.label }], present: step.layout, future };
}
