import { type RefObject, useEffect, useMemo, useRef } from 'react';
import { useTranslations } from 'use-intl';
import { relativeLuminance } from '@/lib/domain/garment/cloth-colours';
import type { FrozenFlat } from '@/lib/domain/garment/flat';
import type { Box } from '@/lib/domain/geometry/box';
import type { Point } from '@/lib/domain/geometry/point';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import type { PlacedPrint } from '@/lib/domain/layout/placement';
import { placedPrint, printsOn } from '@/lib/domain/layout/scene';
import { sizeName } from '@/lib/domain/layout/sizes';
import { tapesFor } from '@/lib/domain/layout/tape';
import { type ChosenPrint, chosenPrint } from '@/lib/editor/chosen-print';
import { shownType } from '@/lib/editor/command';
import type { GuideLine } from '@/lib/editor/neighbours';
import { FRAME_CORNERS, type FrameCorner, frameCorners } from '@/lib/editor/print-frame';
import { type ShownFlat, shownFlat } from '@/lib/editor/shown-flat';
import { caughtGuides } from '@/lib/editor/snap-offers';
import { shownLayout, type TableEditor, tableState, wholeLayout } from '@/lib/editor/table-editor';
import { pxAt } from '@/lib/editor/viewport';
import { isPinned } from '@/lib/editor/working-aids';
import { sizeWords } from '@/lib/messages/reading-words';
import { FindingMarks } from './finding-marks';
import { HeldMeasures } from './held-measures';
import styles from './paper.module.css';
import { PaperScene } from './paper-scene';
import { PatternPaper } from './pattern-paper';
import { PrintFrame } from './print-frame';
import { readingCard, TapeReading } from './tape-reading';
import { useFileDrop } from './use-file-drop';
import { usePaperPointer } from './use-paper-pointer';
import { type PaperView, YARDSTICK_PX } from './use-paper-view';
import type { Change } from './use-reading';
import { Yardstick, YardstickMark } from './yardstick';

type PaperSurfaceProps = {
  surface: RefObject<HTMLDivElement | null>;
  view: PaperView | null;
  editor: TableEditor;
  change: Change;
  href: (sha256: string) => string;
  onFiles: (files: readonly File[]) => void;
};

/** Pattern paper between two yardsticks, with the garment at true scale, the tapes on it and the frame of the print in hand. */
export function PaperSurface({ surface, view, editor, change, href, onFiles }: PaperSurfaceProps) {
  const t = useTranslations('table.paper');
  const readings = useTranslations('readings');
  const layout = shownLayout(editor);
  const { selection } = editor;
  const shown = shownFlat({ layout, selection });
  const pointer = usePaperPointer(surface, view, editor, change);
  const drop = useFileDrop(onFiles);
  const label = shown
    ? t('label', {
        side: readings(`side.${shown.flat.side}`),
        garment: shown.garment.name,
        size: sizeWords(readings, sizeName(shown.offered)),
      })
    : undefined;
  useFocusKept(surface, selection?.printId ?? null);
  const isBare = shown && selection && printsOn(wholeLayout(editor), selection).length === 0;
  return (
    <div
      ref={surface}
      className={styles.surface}
      role="application"
      aria-label={label}
      aria-describedby="paper-help"
      tabIndex={0}
      data-nudges
      {...pointer.handlers}
      {...drop.handlers}
      onKeyDown={(event) => {
        pointer.handlers.onKeyDown(event);
        if (event.key === 'Escape') pointer.giveUp();
      }}
    >
      {view && shown && selection ? (
        <LaidOut editor={editor} change={change} href={href} view={view} shown={shown} />
      ) : null}
      {isBare && !drop.isOver ? <p className={styles.bare}>{t('noPrint')}</p> : null}
      {drop.isOver ? <p className={styles.drop}>{t('drop')}</p> : null}
      <p id="paper-help" className="visually-hidden">
        {t('help')}
      </p>
    </div>
  );
}

/** When the slip that had the focus goes with its print, the paper takes the focus over. */
function useFocusKept(surface: RefObject<HTMLElement | null>, printId: string | null): void {
  const before = useRef(printId);
  useEffect(() => {
    const wasInHand = before.current;
    before.current = printId;
    if (wasInHand !== null && wasInHand !== printId && document.activeElement === document.body)
      surface.current?.focus({ preventScroll: true });
  }, [surface, printId]);
}

/** On a paper narrower than this the cards of readings are smaller, CSS pixels. */
const SMALL_PAPER_PX = 600;

const NO_GUIDES: readonly GuideLine[] = [];
const NO_CORNERS: readonly Point[] = [];

type LaidOutProps = Pick<PaperSurfaceProps, 'editor' | 'change' | 'href'> & { view: PaperView; shown: ShownFlat };

function LaidOut({ editor, change, href, view, shown }: LaidOutProps) {
  const layout = shownLayout(editor);
  const { selection, unit } = editor;
  // A pinned print lies as fast as a signed-off one.
  const locked = editor.locked || isPinned(editor, selection?.printId ?? '');
  const { viewport, widthPx, heightPx, freeToPx } = view;
  const { flat } = shown;
  const setType = shownType(editor);
  const chosen = chosenPrint({ layout, selection });
  const print = chosen?.print ?? null;
  const size = selection?.size ?? null;
  const tapes = useMemo(
    () => (print && size ? tapesFor(print, size, flat, { setType }) : []),
    [print, size, flat, setType],
  );
  const placed = useMemo(
    () => (print && size ? placedPrint(print, size, flat, setType) : null),
    [print, size, flat, setType],
  );
  const zero = { x: 0, y: placed?.measuredFrom.y ?? flat.points.collarSeamCentre?.y ?? 0 };
  const zeroPx = pxAt(viewport, zero);
  const onDark = relativeLuminance(shown.garment.cloth.hex) <= 0.18;
  const corners = print && placed ? frameCorners(placed.frame, placed.matrix) : null;
  const outline = corners ? FRAME_CORNERS.map((corner) => corners[corner]) : NO_CORNERS;
  const clothToPx = pxAt(viewport, { x: flat.points.underarm?.x ?? flat.box.x + flat.box.width, y: 0 }).x;
  const isHeld = editor.held !== null;
  const guides = useMemo(
    () => (isHeld && selection ? caughtGuides({ ...tableState(editor), layout }, editor.hidden) : NO_GUIDES),
    [isHeld, selection, editor, layout],
  );
  const sticks = { unit, pxPerMm: viewport.pxPerMm };
  const isSmall = widthPx < SMALL_PAPER_PX;
  const isCentred = chosen?.group.acrossUm === 0;
  const cards = tapes.map((tape): Box => {
    const { card, at } = readingCard(tape, { isCentred, viewport, isSmall, corners: outline });
    return { x: at.x - card.width / 2, y: at.y - card.height / 2, ...card };
  });
  if (!selection) return null;
  return (
    <>
      <PatternPaper unit={unit} viewport={viewport} zeroY={zero.y} widthPx={widthPx} heightPx={heightPx} />
      <div className={styles.scene} aria-hidden="true">
        <PaperScene {...{ layout, selection, tapes, setType, unit, viewport, widthPx, heightPx, href }} />
      </div>
      {chosen && placed && corners ? (
        <>
          <Frame {...{ chosen, corners, flat, zero, view, onDark, locked, isHeld, cards, change }} />
          {isHeld ? (
            <HeldMeasures {...{ chosen, placed, corners: outline, guides, unit, viewport, freeToPx, onDark }} />
          ) : null}
          {tapes.map((tape) => (
            <TapeReading
              key={`${chosen.print.printId}/${chosen.group.groupId}/${tape.reading}`}
              {...{ tape, chosen, unit, viewport, change, locked, onDark }}
              isSmall={isSmall}
              corners={outline}
              clothToPx={clothToPx}
            />
          ))}
        </>
      ) : null}
      {isHeld ? null : (
        <FindingMarks
          {...{ layout, selection, shown, type: editor.type, unit, viewport, freeToPx, change }}
          handles={outline}
        />
      )}
      <Yardstick {...sticks} lie="along" zeroPx={zeroPx.x} lengthPx={widthPx} widthPx={YARDSTICK_PX.along} />
      <Yardstick {...sticks} lie="down" zeroPx={zeroPx.y} lengthPx={heightPx} widthPx={YARDSTICK_PX.beside} />
      {placed ? <Marks placed={placed} view={view} /> : null}
      <div className={styles.corner} />
    </>
  );
}

type FrameProps = {
  chosen: ChosenPrint;
  corners: Readonly<Record<FrameCorner, Point>>;
  flat: FrozenFlat;
  zero: Point;
  view: PaperView;
  onDark: boolean;
  locked: boolean;
  isHeld: boolean;
  /** The cards of its readings, CSS pixels. */
  cards: readonly Box[];
  change: Change;
};

function Frame({ chosen, corners, flat, zero, view, onDark, locked, isHeld, cards, change }: FrameProps) {
  const isCaught = isHeld && chosen.group.acrossUm === 0;
  const centre = {
    fromY: LOCATIONS[chosen.print.locationId].edge === 'top' ? zero.y : flat.box.y,
    toY: flat.box.y + flat.box.height,
  };
  const { print } = chosen;
  return <PrintFrame {...{ corners, centre, isCaught, isHeld, onDark, locked, print, cards, change, view }} />;
}

function Marks({ placed: { inkBox }, view: { viewport } }: { placed: PlacedPrint; view: PaperView }) {
  const from = pxAt(viewport, { x: inkBox.x, y: inkBox.y });
  const to = pxAt(viewport, { x: inkBox.x + inkBox.width, y: inkBox.y + inkBox.height });
  return (
    <>
      <YardstickMark lie="along" fromPx={from.x} toPx={to.x} widthPx={YARDSTICK_PX.along} />
      <YardstickMark lie="down" fromPx={from.y} toPx={to.y} widthPx={YARDSTICK_PX.beside} />
    </>
  );
}
