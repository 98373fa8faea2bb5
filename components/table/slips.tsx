import { type ReactNode, useState } from 'react';
import { useTranslations } from 'use-intl';
import { printsOn } from '@/lib/domain/layout/scene';
import { otherGarments } from '@/lib/editor/commands/copy-side';
import { type TableEditor, tableState, wholeLayout } from '@/lib/editor/table-editor';
import { CopySide } from './copy-side';
import { Slip } from './slip';
import styles from './slips.module.css';
import { toAddPicture } from './to-add-picture';
import type { Change } from './use-reading';
import type { Perform } from './use-table-commands';

type SlipsProps = {
  editor: TableEditor;
  change: Change;
  perform: Perform;
  /** Stands at the end: add a picture. */
  children: ReactNode;
};

/**
 * One slip of paper for each print of the garment, the one in hand open: first those of the side that is up, the one on top
 * first, then those of the other sides. Whatever can be done on the paper can be done here.
 */
export function Slips({ editor, change, perform, children }: SlipsProps) {
  const t = useTranslations('table.slips');
  const readings = useTranslations('readings');
  const layout = wholeLayout(editor);
  const { selection } = editor;
  // Choosing a slip replaces it by the open one, which then takes over the focus.
  const [pressed, setPressed] = useState<string | null>(null);
  if (!selection) return null;
  const here = printsOn(layout, selection).reverse();
  const elsewhere = layout.prints.filter(
    ({ garmentIds, side }) => garmentIds.includes(selection.garmentId) && side !== selection.side,
  );
  const slip = { editor, change, perform, selection, pressed, setPressed };
  const side = readings(`side.${selection.side}`);
  return (
    <div className={styles.slips}>
      <h2 className="visually-hidden">{t('title')}</h2>
      {here.length + elsewhere.length === 0 ? <p className={styles.none}>{t('none')}</p> : null}
      {here.length + elsewhere.length > 0 && !editor.locked ? (
        <button type="button" className={styles.toAdd} onClick={toAddPicture}>
          {t('another')}
        </button>
      ) : null}
      {here.length > 0 ? (
        <ol className={styles.pile} aria-label={t('pile', { side })}>
          {here.map((print) => (
            <li key={print.printId}>
              <Slip print={print} {...slip} />
            </li>
          ))}
        </ol>
      ) : null}
      {editor.locked || otherGarments(tableState(editor)).length === 0 ? null : (
        <CopySide editor={editor} perform={perform} />
      )}
      {elsewhere.length > 0 ? (
        <section className={styles.elsewhere} aria-labelledby="other-sides">
          <h3 id="other-sides">{t('elsewhere')}</h3>
          {elsewhere.map((print) => (
            <Slip key={print.printId} print={print} {...slip} />
          ))}
        </section>
      ) : null}
      {children}
    </div>
  );
}
