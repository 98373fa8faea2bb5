import { type LengthUnit, type Micrometres, tradeStepUm, umFromInches } from '@/lib/domain/measure/length';

/** How a drag settles: onto the tape's steps, or (while Alt is held) wherever the pointer is. */
export type Snap = { readonly stepUm: Micrometres; readonly centreCatchUm: Micrometres } | null;

/**
 * The snapping of a shop: readings settle on its trade step (1/8 in, or 2 mm), and a print let go within `centreCatchUm`
 * of the centre line lies on it.
 */
export function tradeSnap(unit: LengthUnit, centreCatchUm: Micrometres): Snap {
  return { stepUm: tradeStepUm(unit), centreCatchUm };
}

/** The reading on the nearest step; a half goes away from zero, so mirrored drags end mirrored. */
export function snappedUm(um: number, snap: Snap): Micrometres {
  const step = snap?.stepUm ?? 1;
  return Math.sign(um) * Math.round(Math.abs(um) / step) * step + 0;
}

/** A distance from the centre line on the nearest step, or on the line itself when close enough to it. */
export function snappedAcrossUm(um: number, snap: Snap): Micrometres {
  if (snap && Math.abs(um) <= snap.centreCatchUm) return 0;
  return snappedUm(um, snap);
}

/** How far one arrow key moves a print: the trade's step, or a stride of 1/2 in or 1 cm with Shift (common practice, no source). */
export function nudgeUm(unit: LengthUnit, stride: boolean): Micrometres {
  if (!stride) return tradeStepUm(unit);
  return unit === 'in' ? umFromInches(1 / 2) : 10_000;
}
