import { useEffect, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { TableEditor } from '@/lib/editor/table-editor';
import { saidOf } from './said-words';

/** What is read out after each change at the table: what was done or chosen, and what the tape now says. */
export function useSaid(editor: TableEditor): string {
  const t = useTranslations('table');
  const readings = useTranslations('readings');
  const words = useRef({ t, readings });
  const before = useRef(editor);
  const [said, setSaid] = useState('');

  useEffect(() => {
    const was = before.current;
    // A drag in progress is said once it is let go.
    if (editor.held || was === editor) return;
    before.current = editor;
    const next = saidOf(was, editor, words.current);
    if (next !== null) setSaid(next);
  }, [editor]);
  return said;
}
