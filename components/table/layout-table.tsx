'use client';

import { useRouter } from 'next/navigation';
import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { useTranslations } from 'use-intl';
import { v7 as newId } from 'uuid';
import type { Side } from '@/lib/domain/garment/flat';
import type { LayoutDocument, SizeKey } from '@/lib/domain/layout/document';
import type { LocationId } from '@/lib/domain/layout/locations';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { addPrint, locationsOffered } from '@/lib/editor/commands/add-print';
import { likelyLocation } from '@/lib/editor/likely-location';
import { nameFromFile } from '@/lib/editor/print-name';
import { selectSize } from '@/lib/editor/selection';
import { afterCommand, afterTakingTheirs, afterUndo, newTableEditor, withSelection } from '@/lib/editor/table-editor';
import type { Picture } from '../art/upload-picture';
import { LinkButton } from '../ui/link-button';
import { AddPicture } from './add-picture';
import { ChangedElsewhere } from './changed-elsewhere';
import type { SaveDraft } from './draft-keeper';
import { GarmentSides } from './garment-sides';
import styles from './layout-table.module.css';
import { LockedNotice } from './locked-notice';
import { Paper } from './paper';
import { Slips } from './slips';
import { TableHeader, type TableJob } from './table-header';
import { tableKeys } from './table-keys';
import { useDraftKeeper } from './use-draft-keeper';
import { useSaid } from './use-said';
import { useTableCommands } from './use-table-commands';
import { useUpload } from './use-upload';

/** What the line along the top shows: every size of one garment, one of them chosen. */
export type LineView = {
  readonly layout: LayoutDocument;
  readonly garmentId: string;
  readonly side: Side;
  readonly chosen: SizeKey;
  readonly onChoose: (size: SizeKey) => void;
};

export type LayoutTableProps = {
  job: TableJob;
  unit: LengthUnit;
  draft: { readonly version: number; readonly layout: LayoutDocument };
  pictures: readonly Picture[];
  locked: boolean;
  saveDraft: SaveDraft;
  href: (sha256: string) => string;
  line: (view: LineView) => ReactNode;
};

/** The page where prints are placed: the line, the paper with the garment, and the slips. */
export function LayoutTable({ job, unit, draft, pictures: first, locked, saveDraft, href, line }: LayoutTableProps) {
  const t = useTranslations('table');
  const router = useRouter();
  const [editor, change] = useState(() => newTableEditor(draft.layout, unit, locked));
  const [pictures, setPictures] = useState(first);
  const { progress, take } = useUpload(job.jobId);
  const said = useSaid(editor);
  const refresh = useCallback(() => router.refresh(), [router]);
  const { keeper, saving } = useDraftKeeper(editor.history.present, draft, saveDraft, refresh);
  const { perform, refused } = useTableCommands(editor, change);
  const onKeyDown = useMemo(() => tableKeys(perform, () => {}), [perform]);
  const onChoose = useCallback(
    (size: SizeKey) => change((before) => withSelection(before, (layout, now) => selectSize(layout, now, size))),
    [],
  );

  async function takeIn(file: File): Promise<Picture | null> {
    const picture = await take(file);
    if (picture) setPictures((all) => [...all.filter(({ artId }) => artId !== picture.artId), picture]);
    return picture;
  }

  function place({ name, art }: Picture, locationId: LocationId | null): void {
    const printId = newId();
    change((before) => {
      const likely = likelyLocation({ layout: before.history.present, selection: before.selection });
      const where = locationId ?? likely;
      if (!where) return before;
      return afterCommand(before, addPrint, { printId, name: nameFromFile(name) ?? '', art, locationId: where, newId });
    });
  }

  async function takeDropped(files: readonly File[]): Promise<void> {
    for (const file of files) {
      const picture = await takeIn(file);
      if (!picture) return;
      place(picture, null);
    }
  }

  const { selection, history } = editor;
  const state = { layout: history.present, selection };
  const likely = likelyLocation(state);
  return (
    <div className={styles.page} onKeyDown={onKeyDown}>
      <TableHeader
        job={job}
        saving={saving}
        undo={history.past.at(-1)?.label ?? null}
        redo={history.future[0]?.label ?? null}
        locked={editor.locked}
        change={change}
        flush={keeper.flush}
      />
      {editor.locked ? <LockedNotice jobId={job.jobId} /> : null}
      {saving.kind === 'stopped' && saving.reason === 'locked' ? <LockedNotice jobId={job.jobId} meanwhile /> : null}
      {selection ? (
        <>
          {line({ layout: history.present, ...selection, chosen: selection.size, onChoose })}
          <main className={styles.main}>
            <Paper
              editor={editor}
              change={change}
              href={href}
              onFiles={(files) => void takeDropped(files)}
              beside={<GarmentSides editor={editor} change={change} />}
            >
              <Slips editor={editor} change={change}>
                {editor.locked || !likely ? null : (
                  <AddPicture
                    pictures={pictures}
                    offered={locationsOffered(state)}
                    likely={likely}
                    href={href}
                    progress={progress}
                    onFile={takeIn}
                    onPlace={place}
                  />
                )}
              </Slips>
            </Paper>
          </main>
        </>
      ) : (
        <main className={styles.empty}>
          <h2>{t('empty.title')}</h2>
          <p>{t('empty.text')}</p>
          <LinkButton kind="primary" href={`/jobs/${job.jobId}#garments`}>
            {t('empty.toJob')}
          </LinkButton>
        </main>
      )}
      <p role="status" className="visually-hidden">
        {refused ?? said}
      </p>
      {saving.kind === 'changedElsewhere' ? (
        <ChangedElsewhere
          onTheirs={() => {
            const theirs = keeper.takeTheirs();
            if (theirs) change((before) => afterTakingTheirs(before, theirs));
          }}
          onMine={() => {
            const { theirs } = saving;
            // Redo then leads to theirs, as undo leads back to mine.
            change((before) => afterUndo(afterTakingTheirs(before, theirs)));
            keeper.keepMine();
          }}
        />
      ) : null}
    </div>
  );
}
