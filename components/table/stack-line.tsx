import { useTranslations } from 'use-intl';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { keptUnder, stackOffer } from '@/lib/editor/stack-offer';
import { tableCommand } from '@/lib/editor/table-commands';
import { type TableEditor, wholeLayout } from '@/lib/editor/table-editor';
import styles from './fit-lines.module.css';
import slips from './slips.module.css';
import type { Perform } from './use-table-commands';

type StackLineProps = { chosen: ChosenPrint; editor: TableEditor; perform: Perform; locked: boolean };

/** What the print in hand keeps under, or could. */
export function StackLine({ chosen, editor, perform, locked }: StackLineProps) {
  const t = useTranslations('table.fit');
  const state = { layout: wholeLayout(editor), selection: editor.selection, type: editor.type };
  const kept = keptUnder(state, chosen);
  const offer = kept ?? (locked ? null : stackOffer(state));
  if (!offer) return null;
  const words = { gap: formatLength(offer.gapUm, editor.unit), print: offer.upper.name };
  if (!kept) {
    return (
      <button type="button" className={slips.act} onClick={() => perform(tableCommand('keepUnder'))}>
        {t('keepUnder', words)}
      </button>
    );
  }
  return (
    <div className={styles.stack}>
      <p>{t('keptUnder', words)}</p>
      {locked ? null : (
        <button type="button" className={slips.act} onClick={() => perform(tableCommand('letGo'))}>
          {t('letGo')}
        </button>
      )}
    </div>
  );
}
