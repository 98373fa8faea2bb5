import { type KeyboardEvent, useState } from 'react';

/** What came of applying what was typed: nothing to say, or one sentence on what is wrong. */
export type Applied = { readonly ok: true } | { readonly ok: false; readonly sentence: string };

/**
 * A field that shows a reading until it is typed into: Enter or leaving it applies what was typed, Escape shows the reading
 * again, and text that cannot be read stays as it was typed with one sentence beside it.
 */
export function useTypedText(shown: string, apply: (written: string) => Applied) {
  const [typed, setTyped] = useState<{ text: string; sentence: string | null } | null>(null);
  const isTyped = typed !== null && typed.text !== shown;

  function commit(): boolean {
    if (typed === null) return true;
    const applied: Applied = isTyped ? apply(typed.text) : { ok: true };
    setTyped(applied.ok ? null : { text: typed.text, sentence: applied.sentence });
    return applied.ok;
  }

  function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
    const field = event.currentTarget;
    if (event.key === 'Enter') {
      event.preventDefault();
      if (commit()) requestAnimationFrame(() => field.select());
    } else if (event.key === 'Escape' && typed !== null) {
      event.stopPropagation();
      setTyped(null);
      requestAnimationFrame(() => field.select());
    }
  }

  return {
    sentence: typed?.sentence ?? null,
    field: {
      value: typed?.text ?? shown,
      // While text waits in the field, undo is the text's own.
      'data-typed': isTyped || undefined,
      onChange: (event: { currentTarget: HTMLInputElement }) =>
        setTyped({ text: event.currentTarget.value, sentence: null }),
      onFocus: (event: { currentTarget: HTMLInputElement }) => event.currentTarget.select(),
      onBlur: () => void commit(),
      onKeyDown,
    },
  };
}
