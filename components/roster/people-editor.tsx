'use client';

import { useMemo, useState } from 'react';
import { useLocale, useTranslations } from 'use-intl';
import type { GarmentOnOffer, PeopleList } from '@/lib/domain/people/list';
import { listChecks, openInList } from '@/lib/domain/people/list-checks';
import type { ListEdit } from '@/lib/domain/people/list-edit';
import { Disclosure } from '../ui/disclosure';
import { ColumnsPanel } from './columns-panel';
import { CountsPanel } from './counts-panel';
import { ElsewhereNotices } from './elsewhere-notices';
import { ListChecksNotice } from './list-checks-notice';
import { PastePanel } from './paste-panel';
import styles from './people-editor.module.css';
import { RosterTable } from './roster-table';
import { RosterTools } from './roster-tools';
import { SettingsPanel } from './settings-panel';
import { useList } from './use-list';
import { useShownLines } from './use-shown-lines';

type PeopleEditorProps = {
  jobId: string;
  list: PeopleList;
  garments: readonly GarmentOnOffer[];
  letteredColumnIds: readonly string[];
  thisYear: number;
  makerName: string;
  locked: boolean;
  firstLineId: string;
  /** Lets what the list comes to stand as what is ordered of a garment. */
  takeCounts: (garmentId: string) => Promise<void>;
};

/** A job's list of people, to write in: its table, what has to be settled, its columns, and what it comes to. */
export function PeopleEditor(props: PeopleEditorProps) {
  const { garments, letteredColumnIds, thisYear, locked, takeCounts } = props;
  const t = useTranslations('people');
  const locale = useLocale();
  const { keeper, shown } = useList(props);
  const { list } = shown;
  // Open from the start where there are spares; after that it is the hand's.
  const [hasSpares] = useState(props.list.settings.spares.length > 0);
  const [pasted, setPasted] = useState<{ text: string } | null>(null);
  const checks = useMemo(
    () => listChecks(list, { garments, letteredColumnIds, thisYear }),
    [list, garments, letteredColumnIds, thisYear],
  );
  const open = useMemo(() => openInList(list, checks), [list, checks]);
  const view = useShownLines(list, checks, garments, locale);
  const edit = (edits: readonly ListEdit[]) => keeper.edit(edits);
  const step = (redo: boolean) => (redo ? keeper.redo() : keeper.undo());
  return (
    <div className={styles.editor}>
      <RosterTools
        t={t}
        jobId={props.jobId}
        shown={shown}
        garments={garments}
        checks={checks}
        open={open}
        view={view}
        locked={locked}
        onEdit={edit}
        onUndo={step}
        onPaste={() => setPasted({ text: '' })}
      />
      <ElsewhereNotices
        t={t}
        list={list}
        garments={garments}
        refused={shown.refused}
        onEdit={edit}
        onClose={keeper.close}
      />
      <ListChecksNotice
        t={t}
        list={list}
        garments={garments}
        checks={checks}
        readOnly={locked}
        onEdit={edit}
        onTakeCounts={takeCounts}
      />
      {pasted === null || locked ? null : (
        <PastePanel
          key={pasted.text}
          t={t}
          list={list}
          garments={garments}
          text={pasted.text}
          onAdd={edit}
          onClose={() => setPasted(null)}
        />
      )}
      <RosterTable
        t={t}
        list={list}
        garments={garments}
        lines={view.lines}
        checks={checks}
        sorting={view.sorting}
        readOnly={locked}
        firstLineId={props.firstLineId}
        onSort={view.sortBy}
        onEdit={edit}
        onUndo={step}
        onPasteList={(text) => setPasted({ text })}
      />
      {view.lines.length === 0 && list.lines.length > 0 ? <p>{t('tools.nothingFound')}</p> : null}
      {locked ? null : <p className={styles.keys}>{t('table.keys')}</p>}
      {garments.length === 0 ? null : (
        <Disclosure summary={t('counts.title')} open={hasSpares}>
          <CountsPanel t={t} list={list} garments={garments} readOnly={locked} onEdit={edit} />
        </Disclosure>
      )}
      {locked ? null : (
        <>
          <Disclosure summary={t('columns.title')}>
            <ColumnsPanel t={t} list={list} letteredColumnIds={letteredColumnIds} onEdit={edit} />
          </Disclosure>
          <Disclosure summary={t('settings.title')}>
            <SettingsPanel t={t} list={list} onEdit={edit} />
          </Disclosure>
        </>
      )}
    </div>
  );
}
