import { type ReactNode, useRef } from 'react';
import { type Box, grownBox } from '@/lib/domain/geometry/box';
import { placedPrint } from '@/lib/domain/layout/scene';
import { chosenPrint } from '@/lib/editor/chosen-print';
import { shownType } from '@/lib/editor/command';
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
        <ViewButtons view={view} print={printBox(editor)} />
      </div>
      <aside ref={right} className={styles.slips}>
        {children}
      </aside>
    </div>
  );
}

/** Room around a print that is looked at closely: its tapes lie there, mm (by eye). */
const AROUND_PRINT_MM = 70;

/** The print in hand with its tapes, mm on the flat. */
function printBox(editor: TableEditor): Box | null {
  const { selection } = editor;
  const chosen = chosenPrint({ layout: shownLayout(editor), selection });
  if (!(chosen && selection)) return null;
  return grownBox(placedPrint(chosen.print, selection.size, chosen.flat, shownType(editor)).inkBox, AROUND_PRINT_MM);
}
