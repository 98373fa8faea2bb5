import { useEffect, useRef, useState } from 'react';
import { keptTable } from '@/lib/editor/kept-table';
import type { TableEditor } from '@/lib/editor/table-editor';
import { storedTable, storeTable, tidyTables } from './table-store';

/** How long the hand must rest before the table is kept, ms; well under the second that a reload may lose. */
const REST_MS = 250;

/** What this browser kept of the table; null while it is being looked up. */
export function useStoredTable(jobId: string): { readonly table: unknown } | null {
  const [found, setFound] = useState<{ readonly table: unknown } | null>(null);
  useEffect(() => {
    let isHere = true;
    void storedTable(jobId).then((table) => isHere && setFound({ table }));
    void tidyTables();
    return () => {
      isHere = false;
    };
  }, [jobId]);
  return found;
}

/** Keeps the table in this browser a moment after each change, and at once when the page is put away. */
export function useTableKept(jobId: string, editor: TableEditor, version: number): void {
  const waiting = useRef<{ timer: ReturnType<typeof setTimeout>; keep: () => void } | null>(null);

  useEffect(() => {
    // A drag in progress is no edit yet.
    if (editor.held) return;
    const keep = () => {
      waiting.current = null;
      void storeTable(jobId, keptTable(editor, version));
    };
    if (waiting.current) clearTimeout(waiting.current.timer);
    waiting.current = { timer: setTimeout(keep, REST_MS), keep };
  }, [jobId, editor, version]);

  useEffect(() => {
    const keepNow = () => {
      if (!waiting.current) return;
      clearTimeout(waiting.current.timer);
      waiting.current.keep();
    };
    document.addEventListener('visibilitychange', keepNow);
    window.addEventListener('pagehide', keepNow);
    return () => {
      document.removeEventListener('visibilitychange', keepNow);
      window.removeEventListener('pagehide', keepNow);
      keepNow();
    };
  }, []);
}
