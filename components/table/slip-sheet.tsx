import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { useTranslations } from 'use-intl';
import { printReading } from '@/lib/domain/layout/readings';
import { chosenPrint } from '@/lib/editor/chosen-print';
import { type TableEditor, wholeLayout } from '@/lib/editor/table-editor';
import { readingWords } from '@/lib/messages/reading-words';
import styles from './slip-sheet.module.css';

/**
 * On a phone the slips are a sheet under the paper: shut it is one bar that says what is in hand, open it takes the line's
 * room and scrolls by itself, so that the print stays in sight above it. On a wide window there is no sheet to see.
 */
export function SlipSheet({ editor, children }: { editor: TableEditor; children: ReactNode }) {
  const t = useTranslations('table.sheet');
  const readings = useTranslations('readings');
  const layout = wholeLayout(editor);
  const [isOpen, setOpen] = useState(layout.prints.length === 0);
  const id = useId();
  const inside = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const slips = inside.current;
    const slip = isOpen ? slips?.querySelector('section[data-nudges]') : null;
    // What is in hand is what the sheet is opened for.
    if (slips && slip) slips.scrollTop += slip.getBoundingClientRect().top - slips.getBoundingClientRect().top;
  }, [isOpen]);
  const chosen = chosenPrint({ layout, selection: editor.selection });
  const words = chosen && readingWords(readings, printReading(chosen.print, chosen.group), editor.unit);
  return (
    <div className={styles.sheet} data-sheet={isOpen ? 'open' : 'shut'}>
      <button
        type="button"
        className={styles.bar}
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setOpen(!isOpen)}
      >
        <span className={styles.words}>
          <b>{chosen ? chosen.print.name : t('prints')}</b>
          <span>{words ? `${words.size}, ${words.drop}` : t('none')}</span>
        </span>
        <span className={styles.more}>
          {t(isOpen ? 'shut' : 'open')}
          <svg viewBox="0 0 20 20" aria-hidden="true">
            <path d={isOpen ? 'm4 7 6 6 6-6' : 'm4 13 6-6 6 6'} />
          </svg>
        </span>
      </button>
      <div ref={inside} id={id} className={styles.inside} data-column>
        {children}
      </div>
    </div>
  );
}
