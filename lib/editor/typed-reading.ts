import type { GroupReadings } from '@/lib/domain/layout/group-readings';
import type { Location } from '@/lib/domain/layout/locations';
import { inkHeightUm, widthForHeightUm } from '@/lib/domain/layout/placement';
import type { StartingInk } from '@/lib/domain/layout/starting-groups';
import { blockHeight } from '@/lib/domain/lettering/set-lettering';
import { type Centidegrees, normaliseTurn } from '@/lib/domain/measure/angle';
import type { LengthUnit, Micrometres } from '@/lib/domain/measure/length';
import { isLengthStep, type LengthRefusal, parseLength } from '@/lib/domain/measure/parse-length';
import { FURTHEST_READING_UM, lettersRefusal, sizeRefusal } from './print-limits';

/** The readings of a print that can be typed on its tape; of lettering, `width` is the most it may take across. */
export type ReadingName = 'width' | 'height' | 'drop' | 'across' | 'letters';

/** Why what was typed cannot be set: it could not be read, or no print can be set so. */
export type TypedRefusal =
  | LengthRefusal
  | 'notPositive'
  | 'tooSmall'
  | 'tooLarge'
  | 'lettersTooSmall'
  | 'lettersTooLarge'
  | 'tooFar';
export type TypedReading = { ok: true; um: Micrometres } | { ok: false; reason: TypedRefusal };

/** A reading as it stands: what it is, how long, and what is set: a picture keeps its proportions. */
export type PresentReading = {
  readonly name: ReadingName;
  /** Signed for drop and across. */
  readonly um: Micrometres;
  /** -1 where it is said and typed without its minus: across to the other side, a drop that is measured up. */
  readonly sign: 1 | -1;
  readonly ink: StartingInk;
};

/**
 * What a maker typed on the tape, as the reading to set: a length, or with a leading `+` a step added to the present one.
 * Across is typed without its side: the side it has is kept. A drop measured up is typed as it is said. Whole micrometres, or why it cannot be set.
 */
export function typedReading(written: string, unit: LengthUnit, present: PresentReading): TypedReading {
  const parsed = parseLength(written, unit);
  if (!parsed.ok) return parsed;
  const { sign } = present;
  const um = sign * (isLengthStep(written) ? sign * present.um + parsed.um : parsed.um) + 0;
  const reason = readingRefusal(um, present);
  return reason ? { ok: false, reason } : { ok: true, um };
}

function readingRefusal(um: Micrometres, { name, ink }: PresentReading): TypedRefusal | null {
  if (name === 'drop' || name === 'across') return Math.abs(um) > FURTHEST_READING_UM ? 'tooFar' : null;
  if (um <= 0) return 'notPositive';
  if (name === 'letters') return lettersRefusal(um);
  if (name === 'width') return sizeRefusal(ink, um);
  return 'inkBox' in ink ? sizeRefusal(ink, widthForHeightUm(ink, um)) : lettersRefusal(um / blockHeight(ink, 1));
}

/** The reading of a size group by its name, its drop measured down or up; height is that of the unturned ink. */
export function presentReading(
  name: ReadingName,
  ink: StartingInk,
  group: GroupReadings,
  direction: Location['direction'] = 'down',
): PresentReading {
  const um = {
    width: group.widthUm,
    height: 'inkBox' in ink ? inkHeightUm(ink, group.widthUm) : Math.round(blockHeight(ink, group.capHeightUm ?? 0)),
    drop: group.dropUm,
    across: group.acrossUm,
    letters: group.capHeightUm ?? 0,
  };
  const isTurned = (name === 'across' && um.across < 0) || (name === 'drop' && direction === 'up');
  return { name, um: um[name], sign: isTurned ? -1 : 1, ink };
}

export type TypedTurn = { ok: true; turnCentideg: Centidegrees } | { ok: false; reason: 'emptyTurn' | 'notATurn' };

const WRITTEN_TURN = /^([+-])?\s*(\d{1,4}(?:[.,]\d*)?|[.,]\d+)\s*(?:°|deg|degrees?)?$/;

/** What a maker typed as a turn in degrees, clockwise: `15`, `-7.5°`; a leading `+` turns on from the present one. */
export function typedTurn(written: string, presentCentideg: Centidegrees): TypedTurn {
  const tidy = written.replace(/−/g, '-').trim().toLowerCase();
  if (tidy === '') return { ok: false, reason: 'emptyTurn' };
  const match = WRITTEN_TURN.exec(tidy);
  const degrees = Number(match?.[2]?.replace(',', '.'));
  if (!match || Number.isNaN(degrees)) return { ok: false, reason: 'notATurn' };
  const [, sign] = match;
  const turn = Math.round(degrees * 100) * (sign === '-' ? -1 : 1);
  return { ok: true, turnCentideg: normaliseTurn(sign === '+' ? presentCentideg + turn : turn) + 0 };
}

/** A turn as it is shown in its field: degrees without needless decimals, `0`, `-7.5`. */
export function turnValue(turnCentideg: Centidegrees): string {
  return String(turnCentideg / 100 + 0);
}
