import { type ReactNode, useRef } from 'react';
import { shownFlat } from '@/lib/editor/shown-flat';
import { shownLayout, type TableEditor } from '@/lib/editor/table-editor';
import styles from './paper.module.css';
import { PaperSurface } from './paper-surface';
import { usePaperView } from './use-paper-view';
import type { Change } from './use-reading';
import { ViewButtons } from './view-buttons';

type PaperProps = {
  editor: TableEditor;
  change: Change;
  href: (sha256: string) => string;
  /** Picture files were let go over the paper. */
  onFiles: (files: readonly File[]) => void;
  /** What stands at the left of the garment, above the buttons that bring it closer. */
  beside: ReactNode;
  /** The slips at the right. */
  children: ReactNode;
};

/** The paper that fills the window: the garment on it, what stands beside it, and the slips. */
export function Paper({ editor, change, href, onFiles, beside, children }: PaperProps) {
  const surface = useRef<HTMLDivElement>(null);
  const left = useRef<HTMLDivElement>(null);
  const right = useRef<HTMLElement>(null);
  const shown = shownFlat({ layout: shownLayout(editor), selection: editor.selection });
  const view = usePaperView(surface, left, right, shown?.flat.box ?? null);
  return (
    <div className={styles.table}>
      <PaperSurface surface={surface} view={view} editor={editor} change={change} href={href} onFiles={onFiles} />
      <div ref={left} className={styles.beside}>
        {beside}
        <ViewButtons view={view} />
      </div>
      <aside ref={right} className={styles.slips}>
        {children}
      </aside>
    </div>
  );
}
