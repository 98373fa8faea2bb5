import { type LengthUnit, type Micrometres, tradeStepUm, umFromInches } from '@/lib/domain/measure/length';

/**
 * How a drag settles: on what is offered within `catchUm` of it (the centre line, the usual place, other prints), otherwise
 * on the tape's steps; null (while Alt is held) wherever the pointer is. `unseen` are prints that offer nothing, since they
 * are hidden.
 */
export type Snap = {
  readonly stepUm: Micrometres;
  readonly catchUm: Micrometres;
  readonly unseen?: readonly string[];
} | null;

/** The snapping of a shop: readings settle on its trade step (1/8 in, or 2 mm), or on what is offered within `catchUm`. */
export function tradeSnap(unit: LengthUnit, catchUm: Micrometres, unseen?: readonly string[]): Snap {
  return { stepUm: tradeStepUm(unit), catchUm, unseen };
}

/** The reading on the nearest step; a half goes away from zero, so mirrored drags end mirrored. */
export function snappedUm(um: number, snap: Snap): Micrometres {
  const step = snap?.stepUm ?? 1;
  return Math.sign(um) * Math.round(Math.abs(um) / step) * step + 0;
}

/** The nearest of the offered readings when it is close enough, the first of equally near ones; else the nearest step. */
export function caughtUm(um: number, offered: readonly Micrometres[], snap: Snap): Micrometres {
  if (!snap) return snappedUm(um, snap);
  let caught: Micrometres | null = null;
  for (const each of offered) {
    const isNear = Math.abs(each - um) <= snap.catchUm;
    if (isNear && (caught === null || Math.abs(each - um) < Math.abs(caught - um))) caught = each;
  }
  return caught ?? snappedUm(um, snap);
}

/** How far one arrow key moves a print: the trade's step, or a stride of 1/2 in or 1 cm with Shift (common practice, no source). */
export function nudgeUm(unit: LengthUnit, stride: boolean): Micrometres {
  if (!stride) return tradeStepUm(unit);
  return unit === 'in' ? umFromInches(1 / 2) : 10_000;
}
