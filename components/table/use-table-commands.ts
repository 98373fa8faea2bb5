import { useCallback, useEffect, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import { v7 as newId } from 'uuid';
import type { TableCommand } from '@/lib/editor/table-command';
import type { TableEditor } from '@/lib/editor/table-editor';
import type { Change } from './use-reading';

/** Runs a command, or says why it cannot run now. `continues`: its key is held down. */
export type Perform = (command: TableCommand, continues?: boolean) => void;

/** Runs the table's commands for buttons, keys and the list of all of them; `refused` says why the last one did not run. */
export function useTableCommands(editor: TableEditor, change: Change): { perform: Perform; refused: string | null } {
  const t = useTranslations('table.cannot');
  const [refused, setRefused] = useState<{ sentence: string; at: TableEditor } | null>(null);
  const latest = useRef(editor);
  useEffect(() => {
    latest.current = editor;
  }, [editor]);

  const perform = useCallback<Perform>(
    (command, continues = false) => {
      const refusal = command.refusal(latest.current);
      setRefused(refusal && { sentence: t(refusal), at: latest.current });
      // Several presses can come before the table is drawn again, so the command asks once more where it runs.
      if (!refusal) {
        change((before) => (command.refusal(before) ? before : command.run(before, { newId, continues })));
      }
    },
    [change, t],
  );
  // Whatever is done next makes it old news.
  return { perform, refused: refused?.at === editor ? refused.sentence : null };
}
