import { type LengthUnit, UM_PER_CM, UM_PER_INCH, UM_PER_MM } from '@/lib/domain/measure/length';

/** How long a tick is drawn: at a whole unit, at its half, at a quarter, or at anything finer. */
export type TickRank = 'whole' | 'half' | 'quarter' | 'fine';

/** One tick of a yardstick. `atPx` is its distance along the stick; `number` is written beside whole units that have room. */
export type Tick = { readonly atPx: number; readonly rank: TickRank; readonly number: number | null };

/** Ticks closer than this run together, and numbers closer than this touch (CSS pixels, by eye). */
const LEAST_TICK_PX = 3.6;
const LEAST_NUMBER_PX = 21;

/** How finely each unit is cut, coarsest first. */
const PARTS: Record<LengthUnit, readonly number[]> = { in: [1, 2, 4, 8], cm: [1, 2, 10] };
const NUMBER_EVERY: Record<LengthUnit, readonly number[]> = { in: [1, 2, 3, 6, 12, 36], cm: [1, 2, 5, 10, 50, 100] };

/** Dots of pattern paper closer than this would be a grey veil, CSS pixels (by eye). */
const LEAST_DOT_PX = 8;
/** How far apart dots and crosses lie, in whole units, closest first: they thin out as the garment goes further away. */
const PAPER: Record<LengthUnit, readonly PaperMarks[]> = {
  in: [
    { dotEvery: 1, crossEvery: 5 },
    { dotEvery: 5, crossEvery: 10 },
    { dotEvery: 10, crossEvery: 50 },
  ],
  cm: [
    { dotEvery: 1, crossEvery: 10 },
    { dotEvery: 2, crossEvery: 10 },
    { dotEvery: 5, crossEvery: 10 },
    { dotEvery: 10, crossEvery: 50 },
  ],
};

/** The marks of pattern paper: a dot at every so many inches or centimetres, a cross at every so many. */
export type PaperMarks = { readonly dotEvery: number; readonly crossEvery: number };

/** The closest marks that there is room for at a scale; the widest where there is none. */
export function paperMarks(unit: LengthUnit, pxPerMm: number): PaperMarks {
  const unitPx = unitMm(unit) * pxPerMm;
  const all = PAPER[unit];
  const found = all.find(({ dotEvery }) => dotEvery * unitPx >= LEAST_DOT_PX) ?? all.at(-1);
  if (!found) throw new Error(`no marks for paper in ${unit}`);
  return found;
}

/** Millimetres in a unit of the stick. */
export function unitMm(unit: LengthUnit): number {
  return (unit === 'in' ? UM_PER_INCH : UM_PER_CM) / UM_PER_MM;
}

/**
 * The ticks of a yardstick `lengthPx` long whose zero lies `zeroPx` along it. Cut as finely as the scale has room for;
 * numbers count units from zero, negative before it.
 */
export function yardstickTicks(unit: LengthUnit, pxPerMm: number, zeroPx: number, lengthPx: number): Tick[] {
  const unitPx = unitMm(unit) * pxPerMm;
  const parts = PARTS[unit].findLast((count) => unitPx / count >= LEAST_TICK_PX) ?? 1;
  const every = NUMBER_EVERY[unit].find((count) => unitPx * count >= LEAST_NUMBER_PX) ?? 1;
  const stepPx = unitPx / parts;
  const first = Math.ceil(-zeroPx / stepPx);
  const last = Math.floor((lengthPx - zeroPx) / stepPx);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    const count = first + index;
    const whole = count % parts === 0;
    const number = count / parts;
    return {
      atPx: zeroPx + count * stepPx,
      rank: whole ? 'whole' : rankWithin(Math.abs(count % parts), parts),
      number: whole && number % every === 0 ? number + 0 : null,
    };
  });
}

function rankWithin(part: number, parts: number): TickRank {
  if (part * 2 === parts) return 'half';
  return parts <= 8 && (part * 4) % parts === 0 ? 'quarter' : 'fine';
}
