import { useTranslations } from 'use-intl';
import type { Point } from '@/lib/domain/geometry/point';
import { LOCATIONS } from '@/lib/domain/layout/locations';
import { TAPE_WIDTH_MM, type Tape } from '@/lib/domain/layout/tape';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { readingPlace } from '@/lib/editor/reading-place';
import type { Viewport } from '@/lib/editor/viewport';
import { classNames } from '../ui/class-names';
import styles from './tape-reading.module.css';
import { type Change, useReading } from './use-reading';

/** Size of the card a reading stands on, CSS pixels: smaller on a small paper, where a tape is short. */
const CARD_PX = { width: 92, height: 34 };
const SMALL_CARD_PX = { width: 80, height: 30 };
/** What lies free under a short tape before the next, mm: a label as pictures have it, and room around it. */
const ROOM_UNDER_MM = 60;
/** Room the words beside a card take, CSS pixels. */
const NOTE_PX = 160;

type TapeReadingProps = {
  tape: Tape;
  chosen: ChosenPrint;
  unit: LengthUnit;
  viewport: Viewport;
  change: Change;
  locked: boolean;
  onDark: boolean;
  isSmall: boolean;
  /** Corners a hand has to reach, mm: the card keeps clear of them. */
  corners: readonly Point[];
  /** How far to the right there is cloth to write on, CSS pixels. */
  clothToPx: number;
};

type CardOn = Pick<TapeReadingProps, 'viewport' | 'isSmall' | 'corners'> & { isCentred: boolean };

/** The card a reading stands on: its size, and where its middle goes on the paper. CSS pixels. */
export function readingCard(tape: Tape, { isCentred, viewport, isSmall, corners }: CardOn) {
  const card = isSmall ? SMALL_CARD_PX : CARD_PX;
  // The lowest tape has the whole garment under it.
  const isLowest = tape.reading === 'across' || isCentred;
  const isRoomUnder = isLowest || ROOM_UNDER_MM * tape.scale * viewport.pxPerMm >= card.height + 12;
  const isBeside = tape.reading === 'letters';
  return {
    card,
    at: readingPlace(tape, viewport, card, TAPE_WIDTH_MM * tape.scale, { corners, isRoomUnder, isBeside }),
  };
}

/** The reading on a tape, typed where it stands. */
export function TapeReading({
  tape,
  chosen,
  unit,
  viewport,
  change,
  locked,
  onDark,
  isSmall,
  corners,
  clothToPx,
}: TapeReadingProps) {
  const t = useTranslations('table.reading');
  const measuredUm = tape.reading === 'letters' ? tape.um : undefined;
  const { field, sentence } = useReading(tape.reading, chosen, unit, change, 1, measuredUm);
  const { card, at } = readingCard(tape, { isCentred: chosen.group.acrossUm === 0, viewport, isSmall, corners });
  const hasRoom = at.x + card.width / 2 + NOTE_PX < clothToPx;
  const note = tape.reading === 'drop' && hasRoom ? t(`from.${LOCATIONS[chosen.print.locationId].measuredFrom}`) : null;
  const id = `tape-${tape.reading}`;
  return (
    <div
      className={styles.reading}
      data-reading={tape.reading}
      style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
    >
      <input
        {...field}
        id={id}
        className={styles.card}
        style={{ ...card, top: -card.height / 2, left: -card.width / 2, fontSize: isSmall ? '0.9375rem' : undefined }}
        aria-label={t(`${tape.reading}Of`, { print: chosen.print.name })}
        aria-invalid={sentence ? true : undefined}
        aria-describedby={sentence ? `${id}-wrong` : undefined}
        readOnly={locked}
        autoComplete="off"
        spellCheck={false}
        enterKeyHint="done"
      />
      {note && !sentence ? <span className={classNames(styles.note, onDark && styles.onDark)}>{note}</span> : null}
      {sentence ? (
        <p id={`${id}-wrong`} role="alert" className={styles.wrong}>
          {sentence}
        </p>
      ) : null}
    </div>
  );
}
