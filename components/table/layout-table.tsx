'use client';

import { useRouter } from 'next/navigation';
import { memo, type ReactNode, useCallback, useMemo, useState } from 'react';
import { useTranslations } from 'use-intl';
import type { Side } from '@/lib/domain/garment/flat';
import type { LayoutDocument, SizeKey } from '@/lib/domain/layout/document';
import { fontsUsed } from '@/lib/domain/layout/print-content';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import type { FontChoices } from '@/lib/domain/lettering/font-choice';
import type { LengthUnit } from '@/lib/domain/measure/length';
import { restoredTable } from '@/lib/editor/kept-table';
import { likelyLocation } from '@/lib/editor/likely-location';
import { selectSize } from '@/lib/editor/selection';
import { afterTakingTheirs, afterUndo, wholeLayout, withSelection, withType } from '@/lib/editor/table-editor';
import type { PhoneCode } from '../art/phone-code';
import type { Picture } from '../art/upload-picture';
import { LinkButton } from '../ui/link-button';
import { ArtChecks, artChecks } from './art-checks';
import { ChangedElsewhere } from './changed-elsewhere';
import { CommandList } from './command-list';
import type { SaveDraft } from './draft-keeper';
import { GarmentSides } from './garment-sides';
import styles from './layout-table.module.css';
import { type LetteringTools, LetteringToolsProvider } from './lettering-tools';
import { LockedNotice } from './locked-notice';
import { OpeningFonts } from './opening-fonts';
import type { PageAct } from './page-acts';
import { Paper } from './paper';
import { TableHeader, type TableJob } from './table-header';
import { tableKeys } from './table-keys';
import { TableSlips } from './table-slips';
import { toAddLettering, toAddPicture } from './to-add-picture';
import { useAtRest } from './use-at-rest';
import { useDraftKeeper } from './use-draft-keeper';
import { useLetteringType } from './use-lettering-type';
import { usePictures } from './use-pictures';
import { useSaid } from './use-said';
import { useTableCommands } from './use-table-commands';
import { useStoredTable, useTableKept } from './use-table-store';
import { viewActs } from './view-acts';

// A drag changes nothing in these, so they are not gone through at each move.
const StillHeader = memo(TableHeader);
const StillSides = memo(GarmentSides);

/** What the line along the top shows: every size of one garment, one of them chosen. */
export type LineView = {
  readonly layout: LayoutDocument;
  readonly garmentId: string;
  readonly side: Side;
  readonly type: TypeCase | null;
  readonly personId: string | null;
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
  /** Makes a code for the maker's phone. */
  phoneCode: (jobId: string) => Promise<PhoneCode | null>;
  href: (sha256: string) => string;
  /** The fonts lettering can be set in. */
  fonts: FontChoices;
  line: (view: LineView) => ReactNode;
};

/** The layout table with what this browser kept of it, once that is found. */
export function LayoutTable(props: LayoutTableProps) {
  const t = useTranslations('table');
  const stored = useStoredTable(props.job.jobId);
  if (!stored)
    return (
      <p role="status" className={styles.opening}>
        {t('opening')}
      </p>
    );
  return <LaidOutTable {...props} stored={stored.table} />;
}

/** The page where prints are placed: the line, the paper with the garment, and the slips. */
function LaidOutTable({
  job,
  unit,
  draft,
  pictures: first,
  locked,
  saveDraft,
  phoneCode,
  href,
  fonts,
  line,
  stored,
}: LayoutTableProps & { stored: unknown }) {
  const t = useTranslations('table');
  const router = useRouter();
  const [editor, change] = useState(() => restoredTable(stored, draft, unit, locked));
  const { pictures, progress, add, takeIn, place, takeDropped } = usePictures(job.jobId, first, change);
  const checks = useMemo(() => artChecks(job.jobId, pictures), [job.jobId, pictures]);
  const said = useSaid(editor);
  const refresh = useCallback(() => router.refresh(), [router]);
  const { keeper, saving } = useDraftKeeper(editor.history.present, draft, saveDraft, refresh);
  useTableKept(job.jobId, editor, keeper.version());
  const { perform, refused } = useTableCommands(editor, change);
  const [isListing, setListing] = useState(false);
  const list = useCallback(() => setListing(true), []);
  const onChoose = useCallback(
    (size: SizeKey) => change((before) => withSelection(before, (layout, now) => selectSize(layout, now, size))),
    [],
  );

  const theirs = saving.kind === 'changedElsewhere' ? saving.theirs : null;
  const lettering = useLetteringType(editor.history, theirs, fonts.behind, change);
  const { withFont, failed: fontFailed, waiting } = lettering;
  const tools = useMemo<LetteringTools>(
    () => ({ fonts, withFont, failedFont: fontFailed ? waiting : null, openingFont: fontFailed ? null : waiting }),
    [fonts, withFont, fontFailed, waiting],
  );
  const rested = useAtRest(editor, editor.held !== null);
  const settled = useMemo(() => withType(rested, editor.type), [rested, editor.type]);
  const { selection, history } = editor;
  const state = { layout: history.present, selection };
  const likely = editor.locked ? null : likelyLocation(state);
  const [hasGarment, printId] = [selection !== null, selection?.printId ?? null];
  const acts = useMemo<PageAct[]>(() => {
    const adding = { section: 'more' as const, refusal: likely ? null : ('notNow' as const) };
    return [
      { ...adding, id: 'addPicture', keys: ['A'], run: toAddPicture },
      { ...adding, id: 'addFromPhone', keys: ['Shift+A'], run: addFromPhone },
      { ...adding, id: 'addLettering', keys: ['L'], run: toAddLettering },
      ...viewActs(hasGarment, printId),
    ];
  }, [likely, hasGarment, printId]);
  const onKeyDown = useMemo(() => tableKeys(perform, acts, list), [perform, acts, list]);
  // Letters are measured in their fonts: without them nothing that is lettered could be placed.
  if (!fontsUsed(history.present).every((font) => editor.type?.has(font))) {
    return <OpeningFonts failed={lettering.failed} retry={lettering.retry} />;
  }
  return (
    <LetteringToolsProvider value={tools}>
      <div className={styles.page} onKeyDown={onKeyDown}>
        <StillHeader
          job={job}
          saving={saving}
          undo={history.past.at(-1)?.label ?? null}
          redo={history.future[0]?.label ?? null}
          locked={editor.locked}
          change={change}
          onList={list}
          flush={keeper.flush}
        />
        {editor.locked ? <LockedNotice jobId={job.jobId} /> : null}
        {saving.kind === 'stopped' && saving.reason === 'locked' ? <LockedNotice jobId={job.jobId} meanwhile /> : null}
        {selection ? (
          <>
            <div className={styles.line}>
              {line({
                layout: wholeLayout(settled),
                ...selection,
                type: settled.type,
                personId: settled.personId,
                chosen: selection.size,
                onChoose,
              })}
            </div>
            <main className={styles.main}>
              <ArtChecks value={checks}>
                <Paper
                  editor={editor}
                  change={change}
                  href={href}
                  onFiles={(files) => void takeDropped(files)}
                  beside={<StillSides editor={settled} change={change} />}
                >
                  <TableSlips
                    {...{ change, perform, phoneCode, href, pictures, progress, add, takeIn, place }}
                    editor={settled}
                    jobId={job.jobId}
                  />
                </Paper>
                {refused ? <p className={styles.refused}>{refused}</p> : null}
              </ArtChecks>
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
        {isListing ? <CommandList {...{ editor, perform, acts }} onClose={() => setListing(false)} /> : null}
        {saving.kind === 'changedElsewhere' && !lettering.isOpening ? (
          <ChangedElsewhere
            {...{ selection, unit, href }}
            type={lettering.type}
            mine={history.present}
            theirs={saving.theirs}
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
    </LetteringToolsProvider>
  );
}

/** Presses the button that shows a code for the phone: its dialog is the button's own. */
function addFromPhone(): void {
  document.getElementById('add-from-phone')?.click();
}
