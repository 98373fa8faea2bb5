import type { Point } from '@/lib/domain/geometry/point';
import type { Tape } from '@/lib/domain/layout/tape';
import { pxAt, type Viewport } from './viewport';

/** How much of a tape must show beside the card on it, CSS pixels (by eye). */
const TAPE_SHOWING_PX = 20;
/** How far beside a short tape its card stands, CSS pixels (by eye). */
const ASIDE_PX = 6;

type SizePx = { readonly width: number; readonly height: number };

/**
 * Where the middle of a tape's card goes on the paper, CSS pixels: across the middle of the tape; beside an upright tape,
 * or under a level one, that is too short to carry it and still show. An upright tape's card goes to the outside.
 */
export function readingPlace(
  tape: Pick<Tape, 'from' | 'to'>,
  viewport: Viewport,
  card: SizePx,
  tapeWidthMm: number,
): Point {
  const from = pxAt(viewport, tape.from);
  const to = pxAt(viewport, tape.to);
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const upright = Math.abs(to.x - from.x) < 0.5;
  const lengthPx = Math.hypot(to.x - from.x, to.y - from.y);
  if (lengthPx - (upright ? card.height : card.width) >= TAPE_SHOWING_PX) return middle;
  const aside = (tapeWidthMm * viewport.pxPerMm) / 2 + ASIDE_PX;
  if (!upright) return { x: middle.x, y: middle.y + aside + card.height / 2 };
  const outwards = tape.from.x >= 0 ? 1 : -1;
  return { x: middle.x + outwards * (aside + card.width / 2), y: middle.y };
}
