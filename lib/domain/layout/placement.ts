import type { ArtRef } from '../art/art-ref';
import { type FrozenFlat, pointOf, type Side } from '../garment/flat';
import { type Box, boxAround } from '../geometry/box';
import { applyMatrix, type Matrix, scaleTurnAndMove } from '../geometry/matrix';
import type { Point } from '../geometry/point';
import type { SetLettering } from '../lettering/set-lettering';
import { radiansFromCentideg } from '../measure/angle';
import { type Micrometres, mmFromUm, umFromMm } from '../measure/length';
import type { Print } from './document';
import { LOCATIONS, type LocationId } from './locations';
import type { SetType } from './type-case';

/** The readings that place a print on one size; a letter height for lettering alone. */
export type Readings = {
  readonly widthUm: Micrometres;
  readonly dropUm: Micrometres;
  readonly acrossUm: Micrometres;
  readonly capHeightUm?: Micrometres | undefined;
};

/** A print set down on a flat, in the flat's millimetres. */
export type PlacedPrint = {
  /** Maps what is unturned to millimetres on the flat: a pixel position of the upright picture, or a millimetre of set type. */
  readonly matrix: Matrix;
  /** The box around the unturned ink, before the matrix: pixels of a picture, millimetres of set type. */
  readonly frame: Box;
  /** The box around the turned ink. */
  readonly inkBox: Box;
  /** The box that drop and across are taken of: the ink's; of lettering the turned box of its capitals. */
  readonly readBox: Box;
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
  const inkBox = { ...turnedBox, x: turnedBox.x + shift.x, y: turnedBox.y + shift.y };
  return {
    matrix: [a, b, c, d, e + shift.x, f + shift.y],
    frame: art.inkBox,
    inkBox,
    readBox: inkBox,
    inkOutline: turnedHull.map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y })),
    measuredFrom,
  };
}

/** Sets type down on a flat: turned about its own middle, the box of its capitals at the drop and across its location measures. */
export function placeLettering(
  set: Pick<SetLettering, 'inkHull' | 'letterHull' | 'inkBox'>,
  turnCentideg: number,
  readings: Pick<Readings, 'dropUm' | 'acrossUm'>,
  locationId: LocationId,
  flat: Pick<FrozenFlat, 'side' | 'points'>,
): PlacedPrint {
  const location = LOCATIONS[locationId];
  const measuredFrom = pointOf(flat, location.measuredFrom);
  const turned = scaleTurnAndMove(1, radiansFromCentideg(turnCentideg), { x: 0, y: 0 }, { x: 0, y: 0 });
  const letters = boxAround(set.letterHull.map((point) => applyMatrix(turned, point)));
  const [a, b, c, d] = turned;
  const x = acrossSign(flat.side) * mmFromUm(readings.acrossUm) - (letters.x + letters.width / 2);
  const y = measuredFrom.y + mmFromUm(readings.dropUm) - edgeOf(letters, location.edge);
  const matrix: Matrix = [a, b, c, d, x, y];
  const readBox = { ...letters, x: letters.x + x, y: letters.y + y };
  // Where nothing is to be set the place it would take is kept, so that there is something to take hold of.
  const hull = set.inkHull.length > 0 ? set.inkHull : set.letterHull;
  const inkOutline = hull.map((point) => applyMatrix(matrix, point));
  return {
    matrix,
    frame: set.inkBox ?? boxAround(set.letterHull),
    inkBox: boxAround(inkOutline),
    readBox,
    inkOutline,
    measuredFrom,
  };
}

/** A print set down where these readings have it. Lettering needs `setType`: it throws without. */
export function placeAt(
  { content, turnCentideg, locationId }: Pick<Print, 'content' | 'turnCentideg' | 'locationId'>,
  readings: Readings,
  flat: Pick<FrozenFlat, 'side' | 'points'>,
  setType?: SetType,
): PlacedPrint {
  if (content.kind === 'art') return placeArt(content.art, turnCentideg, readings, locationId, flat);
  if (!setType)
    throw new Error(`lettering "${content.lettering.lines.join(' / ')}" cannot be placed without type to set it in`);
  return placeLettering(setType(content.lettering, readings), turnCentideg, readings, locationId, flat);
}

/** Drop and across of a print's box for readings wherever it was moved to: the inverse of placing it. */
export function readingsFromBox(
  readBox: Box,
  locationId: LocationId,
  flat: Pick<FrozenFlat, 'side' | 'points'>,
): { dropUm: Micrometres; acrossUm: Micrometres } {
  const location = LOCATIONS[locationId];
  return {
    dropUm: umFromMm(edgeOf(readBox, location.edge) - pointOf(flat, location.measuredFrom).y),
    acrossUm: umFromMm(acrossSign(flat.side) * (readBox.x + readBox.width / 2)),
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
