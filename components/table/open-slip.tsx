import { useEffect, useId, useRef } from 'react';
import { useTranslations } from 'use-intl';
import { v7 as newId } from 'uuid';
import type { Location, LocationId } from '@/lib/domain/layout/locations';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { letteringOf } from '@/lib/domain/layout/print-content';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { locationsFor } from '@/lib/editor/commands/add-print';
import { setLocation } from '@/lib/editor/commands/change-print';
import { tableCommand } from '@/lib/editor/table-commands';
import { afterCommand, type TableEditor, wholeLayout } from '@/lib/editor/table-editor';
import { isHidden, isPinned } from '@/lib/editor/working-aids';
import { classNames } from '../ui/class-names';
import { ArtFindingLines } from './art-finding-lines';
import { FitLines } from './fit-lines';
import { LetteringFields } from './lettering-fields';
import { LetteringLines } from './lettering-lines';
import { LocationSelect } from './location-select';
import { OverlapLines } from './overlap-lines';
import { PersonSelect } from './person-select';
import { PrintActs } from './print-acts';
import { PrintGarments } from './print-garments';
import { SizeGroupList } from './size-group-list';
import { NameField, ReadingFields } from './slip-fields';
import styles from './slips.module.css';
import { StackLine } from './stack-line';
import type { Change } from './use-reading';
import type { Perform } from './use-table-commands';
import { WidthsLine } from './widths-line';

type OpenSlipProps = {
  chosen: ChosenPrint;
  editor: TableEditor;
  change: Change;
  perform: Perform;
  takesFocus: boolean;
};

/** The slip of the print in hand: everything about it that can be changed. */
export function OpenSlip({ chosen, editor, change, perform, takesFocus }: OpenSlipProps) {
  const { unit, locked } = editor;
  const t = useTranslations('table.slips');
  const { print, garment } = chosen;
  const layout = wholeLayout(editor);
  const headingId = useId();
  const slip = useRef<HTMLElement>(null);
  useEffect(() => {
    if (slip.current) bringIntoView(slip.current);
    if (takesFocus) slip.current?.focus({ preventScroll: true });
  }, [takesFocus]);
  const offered: readonly Location[] = locationsFor([garment]);
  // The usual place of a chest print is off the centre line.
  const isCentred = (LOCATIONS[print.locationId].starting.adult?.acrossUm ?? 0) === 0;
  const isPinnedHere = isPinned(editor, print.printId);
  const isFast = locked || isPinnedHere;
  const setTo = (locationId: LocationId) =>
    change((before) => afterCommand(before, setLocation, { locationId, newId }));
  return (
    <section
      ref={slip}
      className={classNames(styles.slip, styles.open)}
      aria-labelledby={headingId}
      tabIndex={-1}
      data-nudges
    >
      <h3 id={headingId} className="visually-hidden">
        {print.name}
      </h3>
      <NameField key={`name ${print.printId}`} {...{ chosen, change, locked }} />
      {locked ? null : <PrintActs editor={editor} printId={print.printId} perform={perform} />}
      {isPinnedHere && !locked ? <p className={styles.line}>{t('pinned')}</p> : null}
      {isHidden(editor, print.printId) ? <p className={styles.line}>{t('hidden')}</p> : null}
      <LetteringFields {...{ chosen, editor, change }} locked={locked} />
      {letteringOf(print) ? <PersonSelect editor={editor} change={change} /> : null}
      <LocationSelect
        label={t('location')}
        value={print.locationId}
        offered={offered}
        locked={isFast}
        onChoose={setTo}
      />
      <PrintGarments chosen={chosen} garments={editor.history.present.garments} change={change} locked={locked} />
      <SizeGroupList {...{ chosen, unit, change }} />
      <ReadingFields key={`${print.printId} ${chosen.group.groupId}`} {...{ chosen, unit, change }} locked={isFast} />
      <StackLine {...{ chosen, editor, perform }} locked={isFast} />
      <ArtFindingLines {...{ chosen, editor, change }} locked={isFast} />
      <LetteringLines {...{ chosen, editor }} />
      <FitLines {...{ chosen, unit, change, locked }} setType={editor.type?.longest} />
      <OverlapLines layout={layout} {...{ chosen, unit }} setType={editor.type?.longest} />
      {isFast || letteringOf(print) ? null : <WidthsLine {...{ chosen, editor, perform }} />}
      {isFast ? null : (
        <div className={styles.acts}>
          <button type="button" className={styles.act} onClick={() => perform(tableCommand('usualPlace'))}>
            {t(isCentred ? 'centre' : 'usual')}
          </button>
        </div>
      )}
    </section>
  );
}

/** Scrolls the column of slips, and never the page, until the slip shows from its top. */
function bringIntoView(slip: HTMLElement): void {
  const columns = [slip.closest<HTMLElement>('[data-column]'), slip.closest('aside')];
  const column = columns.find((each) => each && each.scrollHeight > each.clientHeight && each.clientHeight > 0);
  if (!column) return;
  const top = slip.getBoundingClientRect().top - column.getBoundingClientRect().top + column.scrollTop;
  const bottom = top + slip.offsetHeight;
  const isWhole = top >= column.scrollTop && bottom <= column.scrollTop + column.clientHeight;
  if (!isWhole) column.scrollTop = top - parseFloat(getComputedStyle(column).paddingTop);
}
