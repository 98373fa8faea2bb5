import type { Point } from '@/lib/domain/geometry/point';
import { type Centidegrees, normaliseTurn } from '@/lib/domain/measure/angle';

/** How a turn by hand settles: on whole degrees, on every 15° (with Shift), or wherever the pointer is (with Alt). */
export type TurnSnap = 'degrees' | 'fifteens' | 'free';

const STEP_CENTIDEG: Readonly<Record<TurnSnap, Centidegrees>> = { degrees: 100, fifteens: 1_500, free: 1 };
/** A print let go this near to upright, or to a quarter turn, lies on it while degrees settle (by eye). */
const QUARTER_CATCH_CENTIDEG = 250;
const QUARTER_CENTIDEG = 9_000;

/**
 * The turn of a print whose handle was taken hold of at one place and is at another now, seen from the print's middle;
 * `startCentideg` is how it was turned before. The very same turn when a place is the middle itself.
 */
export function turnByHand(
  startCentideg: Centidegrees,
  middle: Point,
  { from, to }: { readonly from: Point; readonly to: Point },
  snap: TurnSnap,
): Centidegrees {
  const by = angleTo(middle, to) - angleTo(middle, from);
  return Number.isFinite(by) ? settledTurn(startCentideg + (by / Math.PI) * 18_000, snap) : startCentideg;
}

/** A turn by keys: a degree on or back, or to the next 15° that way. */
export function turnByStep(fromCentideg: Centidegrees, towards: 1 | -1, snap: 'degrees' | 'fifteens'): Centidegrees {
  const step = STEP_CENTIDEG[snap];
  const steps = fromCentideg / step;
  return normaliseTurn((towards > 0 ? Math.floor(steps + 1e-9) + 1 : Math.ceil(steps - 1e-9) - 1) * step) + 0;
}

function settledTurn(turn: number, snap: TurnSnap): Centidegrees {
  const quarter = Math.round(turn / QUARTER_CENTIDEG) * QUARTER_CENTIDEG;
  const isCaught = snap === 'degrees' && Math.abs(turn - quarter) <= QUARTER_CATCH_CENTIDEG;
  const step = STEP_CENTIDEG[snap];
  return normaliseTurn(isCaught ? quarter : Math.round(turn / step) * step) + 0;
}

function angleTo(middle: Point, at: Point): number {
  const [x, y] = [at.x - middle.x, at.y - middle.y];
  return x === 0 && y === 0 ? Number.NaN : Math.atan2(y, x);
}
