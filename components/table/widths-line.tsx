import { useDeferredValue, useMemo } from 'react';
import { useTranslations } from 'use-intl';
import type { SizeKey } from '@/lib/domain/layout/document';
import { type GroupSuggestion, widthsOn } from '@/lib/domain/layout/size-group-suggestion';
import { keyOf, sizesToShow } from '@/lib/domain/layout/sizes';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { groupSuggestion } from '@/lib/editor/commands/group-sizes';
import { tableCommand } from '@/lib/editor/table-commands';
import type { TableEditor } from '@/lib/editor/table-editor';
import { Button } from '../ui/button';
import styles from './fit-lines.module.css';
import { groupWords } from './group-words';
import slips from './slips.module.css';
import type { Perform } from './use-table-commands';

type WidthsLineProps = { chosen: ChosenPrint; editor: TableEditor; perform: Perform };

/** Widths at which the print in hand looks alike on every size, and the way back to one; how many transfers each means. */
export function WidthsLine({ chosen: { print, garment, group }, editor, perform }: WidthsLineProps) {
  const t = useTranslations('table.fit');
  const readings = useTranslations('readings');
  const { history, selection, unit, type } = editor;
  // Found from what is set, not from a drag in progress, and when there is time.
  const layout = useDeferredValue(history.present);
  const suggestion = useMemo(() => groupSuggestion({ layout, selection, unit, type }), [layout, selection, unit, type]);
  const present = widthsOn(print, sizesToShow(garment).map(keyOf)).length;
  if (!suggestion && present < 2) return null;
  return (
    <div className={styles.fit}>
      {suggestion && !editor.held ? (
        <>
          <p>{t('alike', { count: suggestion.widthsUm.length })}</p>
          <ul className={styles.bands}>
            {bandsOf(suggestion).map(({ widthUm, members }) => {
              const sizes = groupWords(readings, garment, members);
              return sizes === '' ? null : (
                <li key={widthUm}>{t('band', { width: formatLength(widthUm, unit), sizes })}</li>
              );
            })}
          </ul>
          <p className={styles.cost}>{t('cost', { count: suggestion.widthsUm.length, present })}</p>
          <Button kind="secondary" onClick={() => perform(tableCommand('alike'))}>
            {t('useAlike', { count: suggestion.widthsUm.length })}
          </Button>
        </>
      ) : null}
      {present > 1 ? (
        <button type="button" className={slips.act} onClick={() => perform(tableCommand('oneWidth'))}>
          {t('oneWidth', { width: formatLength(group.widthUm, unit) })}
        </button>
      ) : null}
    </div>
  );
}

/** The suggested widths, each with every size that gets it, in the order of the sizes. */
function bandsOf({ groups }: GroupSuggestion): { widthUm: number; members: SizeKey[] }[] {
  const widths = [...new Set(groups.map(({ widthUm }) => widthUm))];
  return widths.map((widthUm) => ({
    widthUm,
    members: groups.filter((group) => group.widthUm === widthUm).flatMap(({ members }) => members),
  }));
}
