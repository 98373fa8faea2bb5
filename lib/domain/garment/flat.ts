import { z } from 'zod';
import type { Box } from '../geometry/box';
import { type Path, pathData } from '../geometry/path';
import type { Point } from '../geometry/point';

/** Sides a print can go on, named as the wearer would. */
export const SIDES = ['front', 'back', 'leftSleeve', 'rightSleeve'] as const;
export type Side = (typeof SIDES)[number];

/** Pieces of cloth and hardware; a flat lists its own in the order they are painted. */
export const CLOTH_PARTS = [
  'insideBack',
  'sleeve',
  'body',
  'rib',
  'hood',
  'collar',
  'pocket',
  'side',
  'strap',
  'metal',
  'button',
] as const;
export type ClothPart = (typeof CLOTH_PARTS)[number];

/** Lines of a garment. */
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
  'collarEdge',
  'coveredSeam',
  'ribSeam',
  'cuffSeam',
  'hoodEdge',
  'hoodSeam',
  'pocketEdge',
  'zip',
  'placket',
  'lapEdge',
  'legEdge',
  'snap',
  'rise',
  'inseam',
  'outseam',
  'waistSeam',
  'topEdge',
  'panelSeam',
  'brimSeam',
  'brimEdge',
  'bibEdge',
  'strapEdge',
  'stitch',
  'drawcord',
  'button',
  'eyelet',
] as const;
export type FlatLineName = (typeof FLAT_LINES)[number];

/**
 * Lines that are drawn but can be pressed over: stitching, knit, folds, cords that are laid aside, and what lies inside
 * the neck or under a collar or hood. Across all others a press cannot lie flat.
 */
export const PRESSABLE_LINES: ReadonlySet<FlatLineName> = new Set<FlatLineName>([
  'hemStitch',
  'sleeveStitch',
  'stitch',
  'ribKnit',
  'fold',
  'drawcord',
  'innerCollar',
  'coveredSeam',
]);

/** Named places of a garment that a tape can start from. */
export const FLAT_POINTS = [
  'collarSeamCentre',
  'highPointShoulder',
  'shoulderPoint',
  'underarm',
  'hemCentre',
  'sleeveHemFold',
  'topEdgeCentre',
  'bibTopCentre',
  'brimSeamCentre',
  'outseamTop',
] as const;
export type FlatPointName = (typeof FLAT_POINTS)[number];

/** A piece of a flat. `second`: it is of the garment's second cloth where it has one, such as the sleeves of a raglan. */
export type FlatPart = { readonly part: ClothPart; readonly path: Path; readonly second?: true };

/** A line of a flat. `second`: it lies on the second cloth. */
export type FlatLine = { readonly line: FlatLineName; readonly path: Path; readonly second?: true };

/**
 * A garment side lying flat, in millimetres; x to the viewer's right, y down. Seen from outside, so on the front the
 * wearer's left is at positive x, on the back at negative x. Named points on a paired place are those at positive x.
 *
 * Origin, on the centre line: front and back of a top level with the high points of the shoulders; a leg level with the
 * top of its waistband, its centre line the middle of the thigh; bags, aprons, panels at their top edge, a cap at the top
 * of its front panel.
 *
 * A sleeve is laid on its underarm seam so that the fold from shoulder to hem lies up the middle: that fold is the centre
 * line and the end of the shoulder (of a raglan: its top at the neck) is the origin, so `sleeveHemFold` is at
 * (0, sleeve length). The wearer's front is at the viewer's left of a left sleeve and at the viewer's right of a right
 * one.
 */
export type Flat = {
  readonly side: Side;
  readonly parts: readonly FlatPart[];
  readonly lines: readonly FlatLine[];
  /** The edge of what can be decorated, one closed run. */
  readonly outline: Path;
  /** The places this side has. */
  readonly points: Readonly<Partial<Record<FlatPointName, Point>>>;
  /** Around everything drawn. */
  readonly box: Box;
};

const pointSchema = z.object({ x: z.number(), y: z.number() });
const second = z.literal(true).optional();

/** A flat as a revision keeps it: path data instead of shapes to compute with, never drawn anew. */
export const frozenFlatSchema = z.object({
  side: z.enum(SIDES),
  parts: z.array(z.object({ part: z.enum(CLOTH_PARTS), d: z.string(), second })),
  lines: z.array(z.object({ line: z.enum(FLAT_LINES), d: z.string(), second })),
  outline: z.string(),
  points: z.partialRecord(z.enum(FLAT_POINTS), pointSchema),
  box: z.object({ x: z.number(), y: z.number(), width: z.number(), height: z.number() }),
});
export type FrozenFlat = z.infer<typeof frozenFlatSchema>;

/** Where a named place is. Throws for a place the side does not have, such as the collar of a tote. */
export function pointOf({ side, points }: Pick<FrozenFlat, 'side' | 'points'>, name: FlatPointName): Point {
  const point = points[name];
  if (!point) throw new Error(`${side} has no ${name}, only ${Object.keys(points).join(', ')}`);
  return point;
}

/** The flat with its shapes written as path data, coordinates kept to a micrometre. */
export function freezeFlat(flat: Flat): FrozenFlat {
  return {
    side: flat.side,
    parts: flat.parts.map(({ part, path, second: of }) => ({ part, d: pathData(path), ...(of && { second: of }) })),
    lines: flat.lines.map(({ line, path, second: of }) => ({ line, d: pathData(path), ...(of && { second: of }) })),
    outline: pathData(flat.outline),
    points: Object.fromEntries(
      FLAT_POINTS.flatMap((name) => {
        const point = flat.points[name];
        return point ? [[name, toMicrometre(point)]] : [];
      }),
    ),
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
