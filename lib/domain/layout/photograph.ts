import { z } from 'zod';
import { FLAT_POINTS, type FlatPointName, type FrozenFlat, pointOf, SIDES } from '../garment/flat';
import type { Box } from '../geometry/box';
import { applyMatrix, inverted, type Matrix, scaleTurnAndMove } from '../geometry/matrix';
import { distance, type Point } from '../geometry/point';
import { type Micrometres, umFromMm } from '../measure/length';

const px = z.number().min(-100_000).max(100_000);
const pixelSchema = z.object({ x: px, y: px });
const sizePx = z.number().int().min(1).max(100_000);

/**
 * The shop's own photograph of one side of one size in one colour, as a layout holds it: whole in itself, so that nothing
 * changes when the shop takes another. It lies under the drawn scene; readings and fit stay those of the flat.
 */
export const photographSchema = z.object({
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  widthPx: sizePx,
  heightPx: sizePx,
  side: z.enum(SIDES),
  sizeId: z.string().min(1).max(64),
  colourName: z.string().min(1).max(60),
  /** Maps a pixel position of the upright photograph to millimetres of the flat. */
  matrix: z.tuple([z.number(), z.number(), z.number(), z.number(), z.number(), z.number()]),
});
export type Photograph = z.infer<typeof photographSchema>;

/** Two named places of a flat, where each is in the photograph, px; and, where one was taken, a width across the cloth. */
export const photographSettingSchema = z.object({
  places: z.tuple([z.enum(FLAT_POINTS), z.enum(FLAT_POINTS)]),
  points: z.tuple([pixelSchema, pixelSchema]),
  check: z.tuple([pixelSchema, pixelSchema]).nullable(),
});
export type PhotographSetting = z.infer<typeof photographSettingSchema>;

/** Two places of a flat that a tape can be laid between. */
export type PlacePair = readonly [FlatPointName, FlatPointName];

/** A photograph's size, px. */
export type PictureSize = { readonly widthPx: number; readonly heightPx: number };

/** What of a flat a photograph is set by. */
export type FlatToSet = Pick<FrozenFlat, 'side' | 'points' | 'box'>;

export const SETTING_REFUSALS = ['otherPlaces', 'outsidePicture', 'tooNear', 'tooCoarse', 'mostlyOutside'] as const;
export type SettingRefusal = (typeof SETTING_REFUSALS)[number];

/** A photograph set to scale; `tapeUm` lies between the two places on the flat, `turnRad` is clockwise as seen. */
export type SetToScale =
  | {
      readonly ok: true;
      readonly matrix: Matrix;
      readonly tapeUm: Micrometres;
      readonly pxPerMm: number;
      readonly turnRad: number;
    }
  | { readonly ok: false; readonly reason: SettingRefusal };

/** The two points are at least this share of the photograph's shorter side apart: a pixel of doubt then stays small. */
const LEAST_APART = 1 / 3;
/** Fewer pixels to the millimetre would show cloth coarser than the pictures of a garment are. */
const LEAST_PX_PER_MM = 0.5;
/** So much of the flat has to lie within the photograph, or the points are not where they are said to be. */
const LEAST_INSIDE = 0.5;
/** The flat's box is looked at in so many places each way. */
const LOOKED_AT = 12;

/** Pairs of places in the order a maker would take them: far apart along the middle, easily found in a photograph. */
const PLACE_PAIRS: readonly PlacePair[] = [
  ['collarSeamCentre', 'hemCentre'],
  ['bibTopCentre', 'hemCentre'],
  ['outseamTop', 'hemCentre'],
  ['topEdgeCentre', 'hemCentre'],
  ['topEdgeCentre', 'brimSeamCentre'],
  ['shoulderPoint', 'sleeveHemFold'],
  ['highPointShoulder', 'hemCentre'],
  ['shoulderPoint', 'hemCentre'],
];

/** The pairs of places a side can be set to scale by, the usual one first. Every side of every kind has one. */
export function placePairs({ points }: Pick<FlatToSet, 'points'>): readonly [PlacePair, ...PlacePair[]] {
  const [first, ...more] = PLACE_PAIRS.filter(([from, to]) => points[from] && points[to]);
  if (!first) throw new Error(`no two places to lay a tape between in ${Object.keys(points).join(', ')}`);
  return [first, ...more];
}

/**
 * Scale, turn and place of a photograph from two points of a tape: the similarity that sends each point in it to its place
 * on the flat. Nothing is mirrored or stretched. Refused where that cannot be meant.
 */
export function setToScale(
  { places, points }: Pick<PhotographSetting, 'places' | 'points'>,
  picture: PictureSize,
  flat: FlatToSet,
): SetToScale {
  if (!placePairs(flat).some(([from, to]) => from === places[0] && to === places[1]))
    return { ok: false, reason: 'otherPlaces' };
  if (points.some((point) => !isInside(point, picture))) return { ok: false, reason: 'outsidePicture' };
  const [fromMm, toMm] = [pointOf(flat, places[0]), pointOf(flat, places[1])];
  const [lengthMm, lengthPx] = [distance(fromMm, toMm), distance(...points)];
  if (lengthPx < LEAST_APART * Math.min(picture.widthPx, picture.heightPx)) return { ok: false, reason: 'tooNear' };
  if (lengthPx / lengthMm < LEAST_PX_PER_MM) return { ok: false, reason: 'tooCoarse' };
  const turnRad = turnBetween(points, [fromMm, toMm]);
  const matrix = scaleTurnAndMove(lengthMm / lengthPx, turnRad, points[0], fromMm);
  if (shareInside(flat.box, matrix, picture) < LEAST_INSIDE) return { ok: false, reason: 'mostlyOutside' };
  return { ok: true, matrix, tapeUm: umFromMm(lengthMm), pxPerMm: lengthPx / lengthMm, turnRad };
}

/** Where the two points are before anybody moved them: the flat upright in the middle of the photograph. */
export function startingPoints(
  [from, to]: PlacePair,
  { widthPx, heightPx }: PictureSize,
  flat: FlatToSet,
): PhotographSetting['points'] {
  const { box } = flat;
  const filled = 0.84;
  const pxPerMm = filled * Math.min(widthPx / box.width, heightPx / box.height);
  const inPicture = ({ x, y }: Point) => ({
    x: Math.round(widthPx / 2 + (x - box.x - box.width / 2) * pxPerMm),
    y: Math.round(heightPx / 2 + (y - box.y - box.height / 2) * pxPerMm),
  });
  return [inPicture(pointOf(flat, from)), inPicture(pointOf(flat, to))];
}

/** How far one direction has to be turned to lie in another, clockwise as seen, within half a turn either way. */
function turnBetween([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): number {
  const turn = Math.atan2(d.y - c.y, d.x - c.x) - Math.atan2(b.y - a.y, b.x - a.x);
  return Math.atan2(Math.sin(turn), Math.cos(turn));
}

function isInside({ x, y }: Point, { widthPx, heightPx }: PictureSize): boolean {
  return x >= 0 && y >= 0 && x <= widthPx && y <= heightPx;
}

/** The share of a box on the flat that the photograph shows. */
function shareInside(box: Box, matrix: Matrix, picture: PictureSize): number {
  const toPicture = inverted(matrix);
  const at = (start: number, length: number, step: number) => start + (length * (step + 0.5)) / LOOKED_AT;
  const steps = Array.from({ length: LOOKED_AT }, (_, step) => step);
  const seen = steps.flatMap((row) =>
    steps.filter((column) => {
      const point = { x: at(box.x, box.width, column), y: at(box.y, box.height, row) };
      return isInside(applyMatrix(toPicture, point), picture);
    }),
  );
  return seen.length / LOOKED_AT ** 2;
}
