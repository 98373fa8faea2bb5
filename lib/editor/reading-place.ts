import type { Point } from '@/lib/domain/geometry/point';
import type { Tape } from '@/lib/domain/layout/tape';
import { pxAt, type Viewport } from './viewport';

/** How much of a tape must show beside the card on it, CSS pixels (by eye). */
const TAPE_SHOWING_PX = 20;
/** How far beside a short tape its card stands, and how clear it keeps of a corner to press, CSS pixels (by eye). */
const ASIDE_PX = 6;
const CORNER_PX = 16;

type SizePx = { readonly width: number; readonly height: number };

/** What a card has to do with what lies around its tape. */
type Around = {
  readonly corners?: readonly Point[];
  readonly isRoomUnder?: boolean;
  /** It stands beside an upright tape whatever its length: what is measured lies close by. */
  readonly isBeside?: boolean;
};

/**
 * Where the middle of a tape's card goes on the paper, CSS pixels: across the middle of the tape; beside an upright tape,
 * or under a level one, that is too short to carry it and still show (beside a level one too where there is no room under
 * it). Beside is away from the centre line, clear of the corners (millimetres) that a hand has to reach.
 */
export function readingPlace(
  tape: Pick<Tape, 'from' | 'to'>,
  viewport: Viewport,
  card: SizePx,
  tapeWidthMm: number,
  { corners = [], isRoomUnder = true, isBeside = false }: Around = {},
): Point {
  const from = pxAt(viewport, tape.from);
  const to = pxAt(viewport, tape.to);
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const upright = Math.abs(to.x - from.x) < 0.5;
  const lengthPx = Math.hypot(to.x - from.x, to.y - from.y);
  if (!isBeside && lengthPx - (upright ? card.height : card.width) >= TAPE_SHOWING_PX) return middle;
  const aside = (tapeWidthMm * viewport.pxPerMm) / 2 + ASIDE_PX;
  if (!upright && isRoomUnder) return { x: middle.x, y: middle.y + aside + card.height / 2 };
  const outwards = tape.from.x + tape.to.x >= (isBeside ? 2 * middleOf(corners) : 0) ? 1 : -1;
  const reach = upright ? aside : lengthPx / 2 + ASIDE_PX;
  const beside = { x: middle.x + outwards * (reach + card.width / 2), y: middle.y };
  return corners
    .map((corner) => pxAt(viewport, corner))
    .sort((a, b) => outwards * (a.x - b.x))
    .reduce((at, corner) => clearOf(at, corner, card, outwards), beside);
}

function middleOf(corners: readonly Point[]): number {
  return corners.length === 0 ? 0 : corners.reduce((sum, { x }) => sum + x, 0) / corners.length;
}

/** Lifted above a corner that it would cover where a little is enough, set beyond it otherwise. */
function clearOf(at: Point, corner: Point, card: SizePx, outwards: 1 | -1): Point {
  const covers =
    Math.abs(corner.x - at.x) < card.width / 2 + CORNER_PX && Math.abs(corner.y - at.y) < card.height / 2 + CORNER_PX;
  if (!covers) return at;
  const liftedY = corner.y - CORNER_PX - card.height / 2;
  if (at.y - liftedY <= card.height) return { x: at.x, y: Math.min(at.y, liftedY) };
  return { x: corner.x + outwards * (CORNER_PX + card.width / 2), y: at.y };
}
