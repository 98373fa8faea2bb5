import { type ReactNode, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Garment, Print } from '@/lib/domain/layout/document';
import { printReading } from '@/lib/domain/layout/readings';
import { groupFor } from '@/lib/domain/layout/sizes';
import { type ChosenPrint, chosenPrint } from '@/lib/editor/chosen-print';
import { type Selection, selectPrint } from '@/lib/editor/selection';
import { shownFlat } from '@/lib/editor/shown-flat';
import { shownLayout, type TableEditor, withSelection } from '@/lib/editor/table-editor';
import { readingWords } from '@/lib/messages/reading-words';
import { groupWords } from './group-words';
import { OpenSlip } from './open-slip';
import styles from './slips.module.css';
import type { Change } from './use-reading';

type SlipsProps = {
  editor: TableEditor;
  change: Change;
  /** Stands at the end: add a picture. */
  children: ReactNode;
};

/** One slip of paper for each print of the garment, the one in hand open. */
export function Slips({ editor, change, children }: SlipsProps) {
  const t = useTranslations('table.slips');
  const layout = shownLayout(editor);
  const { selection } = editor;
  const shown = shownFlat({ layout, selection });
  const chosen = chosenPrint({ layout, selection });
  // Choosing a slip replaces it by the open one, which then takes over the focus.
  const [pressed, setPressed] = useState<string | null>(null);
  if (!(shown && selection)) return null;
  const prints = layout.prints.filter(({ garmentIds }) => garmentIds.includes(selection.garmentId));
  return (
    <div className={styles.slips}>
      <h2 className="visually-hidden">{t('title')}</h2>
      {prints.length === 0 ? <p className={styles.none}>{t('none')}</p> : null}
      {prints.map((print) => (
        <Slip
          key={print.printId}
          print={print}
          chosen={chosen}
          garment={shown.garment}
          {...{ editor, change, selection, pressed, setPressed }}
        />
      ))}
      {children}
    </div>
  );
}

type SlipProps = {
  print: Print;
  chosen: ChosenPrint | null;
  garment: Garment;
  editor: TableEditor;
  change: Change;
  selection: Selection;
  pressed: string | null;
  setPressed: (printId: string) => void;
};

function Slip({ print, chosen, garment, editor, change, selection, pressed, setPressed }: SlipProps) {
  const readings = useTranslations('readings');
  const { unit, locked } = editor;
  const { printId } = print;
  if (chosen?.print.printId === printId) {
    return <OpenSlip {...{ chosen, unit, change, locked }} takesFocus={pressed === printId} />;
  }
  const group = groupFor(print, selection.size);
  const words = readingWords(readings, printReading(print, group), unit);
  return (
    <button
      type="button"
      className={styles.slip}
      data-nudges
      onClick={() => {
        setPressed(printId);
        change((before) => withSelection(before, (layout, now) => selectPrint(layout, now, printId)));
      }}
    >
      <b className={styles.name}>{print.name}</b>
      <span className={styles.line}>
        {readings(`location.${print.locationId}`)}, {groupWords(readings, garment, group.members)}
      </span>
      <span className={styles.line}>
        {words.size}, {words.drop}
      </span>
    </button>
  );
}
