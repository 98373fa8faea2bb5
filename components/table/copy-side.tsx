import { useTranslations } from 'use-intl';
import { copySide, otherGarments } from '@/lib/editor/commands/copy-side';
import { editing } from '@/lib/editor/table-command';
import { type TableEditor, tableState } from '@/lib/editor/table-editor';
import { colourWords } from '@/lib/messages/cloth-words';
import styles from './slips.module.css';
import type { Perform } from './use-table-commands';

/** The command that copies the side that is up to one other garment. */
export function copySideTo(garmentId: string) {
  return editing({ id: `copySide-${garmentId}`, section: 'more', canBeIdle: true }, copySide, ({ newId }) => ({
    garmentId,
    newId,
  }));
}

/** One press for each other garment that the side that is up can be copied to. */
export function CopySide({ editor, perform }: { editor: TableEditor; perform: Perform }) {
  const t = useTranslations('table.slips');
  const readings = useTranslations('readings');
  const side = readings(`side.${editor.selection?.side ?? 'front'}`);
  return (
    <p className={styles.copy}>
      <span>{t('copySide', { side })}</span>
      {otherGarments(tableState(editor)).map(({ garmentId, name, cloth }) => (
        <button key={garmentId} type="button" className={styles.act} onClick={() => perform(copySideTo(garmentId))}>
          {name}, {colourWords(readings, cloth)}
        </button>
      ))}
    </p>
  );
}
