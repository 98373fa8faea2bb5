import { useTranslations } from 'use-intl';
import type { Print } from '@/lib/domain/layout/document';
import { printReading } from '@/lib/domain/layout/readings';
import { garmentOf, groupFor } from '@/lib/domain/layout/sizes';
import { chosenPrint } from '@/lib/editor/chosen-print';
import { type Selection, selectPrint } from '@/lib/editor/selection';
import { type TableEditor, wholeLayout, withSelection } from '@/lib/editor/table-editor';
import { isHidden, isPinned, withHidden, withPinned } from '@/lib/editor/working-aids';
import { readingWords } from '@/lib/messages/reading-words';
import { ActIcon } from './act-icon';
import { groupWords } from './group-words';
import { OpenSlip } from './open-slip';
import styles from './slips.module.css';
import type { Change } from './use-reading';
import type { Perform } from './use-table-commands';

type SlipProps = {
  print: Print;
  editor: TableEditor;
  change: Change;
  perform: Perform;
  selection: Selection;
  pressed: string | null;
  setPressed: (printId: string) => void;
};

/** The slip of one print: open for the one in hand, otherwise its readings, with a press to take it in hand. */
export function Slip({ print, editor, change, perform, selection, pressed, setPressed }: SlipProps) {
  const readings = useTranslations('readings');
  const { unit } = editor;
  const { printId } = print;
  const layout = wholeLayout(editor);
  const chosen = chosenPrint({ layout, selection });
  if (chosen?.print.printId === printId) {
    return <OpenSlip {...{ chosen, editor, change, perform }} takesFocus={pressed === printId} />;
  }
  const group = groupFor(print, selection.size);
  const words = readingWords(readings, printReading(print, group), unit);
  return (
    <div className={styles.closed}>
      <button
        type="button"
        className={styles.slip}
        data-nudges
        onClick={() => {
          setPressed(printId);
          change((before) => withSelection(before, (shown, now) => selectPrint(shown, now, printId)));
        }}
      >
        <b className={styles.name}>{print.name}</b>
        <span className={styles.line}>
          {readings(`location.${print.locationId}`)},{' '}
          {groupWords(readings, garmentOf(layout, selection.garmentId), group.members)}
        </span>
        <span className={styles.line}>
          {words.size}, {words.drop}
        </span>
      </button>
      {print.side === selection.side ? <Aids {...{ print, editor, change }} /> : null}
    </div>
  );
}

/** Hide and pin, without taking the print in hand first. */
function Aids({ print: { printId, name }, editor, change }: Pick<SlipProps, 'print' | 'editor' | 'change'>) {
  const t = useTranslations('table.act');
  const hidden = isHidden(editor, printId);
  const pinned = isPinned(editor, printId);
  return (
    <div className={styles.aids}>
      <button
        type="button"
        className={styles.aid}
        aria-pressed={hidden}
        aria-label={t('hideNamed', { print: name })}
        title={t('hide')}
        onClick={() => change((before) => withHidden(before, printId, !hidden))}
      >
        <ActIcon name={hidden ? 'show' : 'hide'} />
      </button>
      {editor.locked ? null : (
        <button
          type="button"
          className={styles.aid}
          aria-pressed={pinned}
          aria-label={t('pinNamed', { print: name })}
          title={t('pin')}
          onClick={() => change((before) => withPinned(before, printId, !pinned))}
        >
          <ActIcon name="pin" />
        </button>
      )}
    </div>
  );
}
