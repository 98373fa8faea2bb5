import { applyMatrix, inverted } from '@/lib/domain/geometry/matrix';
import type { Point } from '@/lib/domain/geometry/point';
import {
  type FlatToSet,
  type PhotographSetting,
  type PictureSize,
  type PlacePair,
  type SetToScale,
  setToScale,
  startingPoints,
} from '@/lib/domain/layout/photograph';
import { startingCheck, type WidthToCheck } from '@/lib/domain/layout/photograph-check';

/** The marks on a photograph: A and B set it to scale, C and D take a width. */
export const MARKS = ['A', 'B', 'C', 'D'] as const;
export type Mark = (typeof MARKS)[number];

/** The points of a photograph while they are being set, px; `inHand` is what a click or a key moves. */
export type MarkedPhotograph = PhotographSetting & { readonly inHand: Mark };

/** A photograph to be set: as it was left, or with the flat in its middle. */
export function startingMarks(
  saved: PhotographSetting | null,
  pair: PlacePair,
  picture: PictureSize,
  flat: FlatToSet,
): MarkedPhotograph {
  const start = { places: [...pair] as [...PlacePair], points: startingPoints(pair, picture, flat), check: null };
  return { ...(saved ?? start), inHand: 'A' };
}

/** Where a mark is; null for C and D while no width is taken. */
export function markAt({ points, check }: PhotographSetting, mark: Mark): Point | null {
  if (mark === 'A' || mark === 'B') return points[mark === 'A' ? 0 : 1];
  return check?.[mark === 'C' ? 0 : 1] ?? null;
}

/** The marks with one of them elsewhere, whole pixels, kept within the photograph. */
export function withMark(marked: MarkedPhotograph, mark: Mark, to: Point, picture: PictureSize): MarkedPhotograph {
  const point = { x: within(to.x, picture.widthPx), y: within(to.y, picture.heightPx) };
  const [a, b] = marked.points;
  if (mark === 'A' || mark === 'B') return { ...marked, points: mark === 'A' ? [point, b] : [a, point] };
  if (!marked.check) return marked;
  const [c, d] = marked.check;
  return { ...marked, check: mark === 'C' ? [point, d] : [c, point] };
}

/** The next mark to set after one was set by a click. */
export function nextMark({ check }: PhotographSetting, mark: Mark): Mark {
  const marks = check ? MARKS : MARKS.slice(0, 2);
  return marks[(marks.indexOf(mark) + 1) % marks.length] ?? 'A';
}

/** Measured between two other places: where the flat lay before, those places are found on the photograph. */
export function withPlaces(
  marked: MarkedPhotograph,
  pair: PlacePair,
  picture: PictureSize,
  flat: FlatToSet,
): MarkedPhotograph {
  const places = [...pair] as [...PlacePair];
  const set = setToScale(marked, picture, flat);
  const [from, to] = [flat.points[pair[0]], flat.points[pair[1]]];
  if (!(set.ok && from && to)) return { ...marked, places, points: startingPoints(pair, picture, flat), inHand: 'A' };
  const inPicture = (point: Point) => {
    const { x, y } = applyMatrix(inverted(set.matrix), point);
    return { x: within(x, picture.widthPx), y: within(y, picture.heightPx) };
  };
  return { ...marked, places, points: [inPicture(from), inPicture(to)], inHand: 'A' };
}

/** A width taken, first where the chart says it is; or left out. */
export function withCheck(
  marked: MarkedPhotograph,
  set: SetToScale,
  width: WidthToCheck,
  picture: PictureSize,
): MarkedPhotograph {
  if (marked.check || !set.ok) return { ...marked, check: null, inHand: 'A' };
  const [c, d] = startingCheck(set.matrix, width);
  const inside = ({ x, y }: Point) => ({ x: within(x, picture.widthPx), y: within(y, picture.heightPx) });
  return { ...marked, check: [inside(c), inside(d)], inHand: 'C' };
}

function within(value: number, most: number): number {
  return Math.min(most, Math.max(0, Math.round(value)));
}
