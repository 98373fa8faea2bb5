import { z } from 'zod';
import type { Box } from '../geometry/box';
import { type Path, pathData } from '../geometry/path';
import type { Point } from '../geometry/point';

/** Sides a print can go on, named as the wearer would. */
export const SIDES = ['front', 'back', 'leftSleeve', 'rightSleeve'] as const;
export type Side = (typeof SIDES)[number];

/** Pieces of cloth, in the order they are painted. */
export const CLOTH_PARTS = ['insideBack', 'sleeve', 'body', 'rib'] as const;
export type ClothPart = (typeof CLOTH_PARTS)[number];

/**
 * Lines of a garment. All but stitching, knit, folds and the inside of the collar are lines a press cannot lie flat
 * across.
 */
export const FLAT_LINES = [
  'collarSeam',
  'shoulderSeam',
  'armhole',
  'sideSeam',
  'hem',
  'sleeveHem',
  'hemStitch',
  'sleeveStitch',
  'innerCollar',
  'ribKnit',
  'fold',
] as const;
export type FlatLineName = (typeof FLAT_LINES)[number];

/** Points readings are measured from. */
export const FLAT_POINTS = ['collarSeamCentre', 'highPointShoulder', 'shoulderPoint', 'underarm', 'hemCentre'] as const;
export type FlatPointName = (typeof FLAT_POINTS)[number];

/**
 * A garment side lying flat, in millimetres. Origin: on the centre line, level with the high points of the shoulders;
 * x to the viewer's right, y down. Seen from outside, so on the front the wearer's left is at positive x, on the back at
 * negative x. Named points on a paired place are those at positive x.
 */
export type Flat = {
  readonly side: Side;
  readonly parts: readonly { readonly part: ClothPart; readonly path: Path }[];
  readonly lines: readonly { readonly line: FlatLineName; readonly path: Path }[];
  readonly outline: Path;
  readonly points: Readonly<Record<FlatPointName, Point>>;
  readonly box: Box;
};

const pointSchema = z.object({ x: z.number(), y: z.number() });

/** A flat as a revision keeps it: path data instead of shapes to compute with, never drawn anew. */
export const frozenFlatSchema = z.object({
  side: z.enum(SIDES),
  parts: z.array(z.object({ part: z.enum(CLOTH_PARTS), d: z.string() })),
  lines: z.array(z.object({ line: z.enum(FLAT_LINES), d: z.string() })),
  outline: z.string(),
  points: z.record(z.enum(FLAT_POINTS), pointSchema),
  box: z.object({ x: z.number(), y: z.number(), width: z.number(), height: z.number() }),
});
export type FrozenFlat = z.infer<typeof frozenFlatSchema>;

/** The flat with its shapes written as path data, coordinates kept to a micrometre. */
export function freezeFlat(flat: Flat): FrozenFlat {
  return {
    side: flat.side,
    parts: flat.parts.map(({ part, path }) => ({ part, d: pathData(path) })),
    lines: flat.lines.map(({ line, path }) => ({ line, d: pathData(path) })),
    outline: pathData(flat.outline),
    points: Object.fromEntries(
      FLAT_POINTS.map((name) => [name, toMicrometre(flat.points[name])]),
    ) as FrozenFlat['points'],
    box: {
      x: thousandth(flat.box.x),
      y: thousandth(flat.box.y),
      width: thousandth(flat.box.width),
      height: thousandth(flat.box.height),
    },
  };
}

function toMicrometre({ x, y }: Point): Point {
  return { x: thousandth(x), y: thousandth(y) };
}

function thousandth(mm: number): number {
  return Math.round(mm * 1000) / 1000 + 0;
}
