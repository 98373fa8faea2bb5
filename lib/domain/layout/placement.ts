import type { ArtRef } from '../art/art-ref';
import { type FrozenFlat, pointOf, type Side } from '../garment/flat';
import { type Box, boxAround } from '../geometry/box';
import { applyMatrix, type Matrix, scaleTurnAndMove } from '../geometry/matrix';
import type { Point } from '../geometry/point';
import { radiansFromCentideg } from '../measure/angle';
import { type Micrometres, mmFromUm, umFromMm } from '../measure/length';
import { LOCATIONS, type LocationId } from './locations';

/** The readings that place a print on one size. */
export type Readings = { readonly widthUm: Micrometres; readonly dropUm: Micrometres; readonly acrossUm: Micrometres };

/** A print set down on a flat, in the flat's millimetres. */
export type PlacedPrint = {
  /** Maps a pixel position of the upright picture to millimetres on the flat. */
  readonly matrix: Matrix;
  /** The box around the turned ink. */
  readonly inkBox: Box;
  /** Convex outline of the turned ink. */
  readonly inkOutline: readonly Point[];
  /** Where the drop is measured from. */
  readonly measuredFrom: Point;
};

/**
 * +1 where positive across is at the viewer's right. Across is positive towards the wearer's left on front and back (seen
 * from behind, that is the viewer's left), and towards the wearer's front on a sleeve.
 */
export function acrossSign(side: Side): 1 | -1 {
  return side === 'back' || side === 'leftSleeve' ? -1 : 1;
}

/**
 * Sets a picture down on a flat: scaled so that its unturned ink is as wide as the reading, turned about the ink, its
 * turned ink's box at the drop and across its location measures.
 */
export function placeArt(
  art: Pick<ArtRef, 'inkBox' | 'inkHull'>,
  turnCentideg: number,
  readings: Readings,
  locationId: LocationId,
  flat: Pick<FrozenFlat, 'side' | 'points'>,
): PlacedPrint {
  const location = LOCATIONS[locationId];
  const measuredFrom = pointOf(flat, location.measuredFrom);
  const scale = mmFromUm(readings.widthUm) / art.inkBox.width;
  const atOrigin = scaleTurnAndMove(scale, radiansFromCentideg(turnCentideg), { x: 0, y: 0 }, { x: 0, y: 0 });
  const turnedHull = art.inkHull.map(([x, y]) => applyMatrix(atOrigin, { x, y }));
  const turnedBox = boxAround(turnedHull);
  const centreX = acrossSign(flat.side) * mmFromUm(readings.acrossUm);
  const edgeY = measuredFrom.y + mmFromUm(readings.dropUm);
  const shift = { x: centreX - (turnedBox.x + turnedBox.width / 2), y: edgeY - edgeOf(turnedBox, location.edge) };
  const [a, b, c, d, e, f] = atOrigin;
  return {
    matrix: [a, b, c, d, e + shift.x, f + shift.y],
    inkBox: { ...turnedBox, x: turnedBox.x + shift.x, y: turnedBox.y + shift.y },
    inkOutline: turnedHull.map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y })),
    measuredFrom,
  };
}

/** Drop and across of a turned ink box wherever it was moved to: the inverse of `placeArt`. */
export function readingsFromBox(
  inkBox: Box,
  locationId: LocationId,
  flat: Pick<FrozenFlat, 'side' | 'points'>,
): { dropUm: Micrometres; acrossUm: Micrometres } {
  const location = LOCATIONS[locationId];
  return {
    dropUm: umFromMm(edgeOf(inkBox, location.edge) - pointOf(flat, location.measuredFrom).y),
    acrossUm: umFromMm(acrossSign(flat.side) * (inkBox.x + inkBox.width / 2)),
  };
}

/** Height of the unturned ink at a width, keeping its proportions. */
export function inkHeightUm(art: Pick<ArtRef, 'inkBox'>, widthUm: Micrometres): Micrometres {
  return umFromMm((mmFromUm(widthUm) * art.inkBox.height) / art.inkBox.width);
}

/** Width that gives the unturned ink this height, keeping its proportions. */
export function widthForHeightUm(art: Pick<ArtRef, 'inkBox'>, heightUm: Micrometres): Micrometres {
  return umFromMm((mmFromUm(heightUm) * art.inkBox.width) / art.inkBox.height);
}

function edgeOf(box: Box, edge: 'top' | 'middle' | 'bottom'): number {
  if (edge === 'top') return box.y;
  return edge === 'middle' ? box.y + box.height / 2 : box.y + box.height;
}
