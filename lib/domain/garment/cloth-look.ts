import type { Box } from '../geometry/box';
import { type ClothColours, clothColours } from './cloth-colours';
import { heatherFibres } from './cloth-heather';
import type { ClothPart, FlatLineName, FrozenFlat } from './flat';

/** The cloth a garment is made of: its colour, and that of its sleeves and ribs where they are of another. */
export type ClothHexes = { readonly hex: string; readonly heather?: boolean; readonly secondHex?: string | undefined };

/** How a line is drawn: colour, width and dashes in millimetres. */
export type LineStroke = { hex: string; widthMm: number; dashMm?: number[] };

/** Widths on a garment of the usual size; see `lineScale`. */
const OUTLINE_MM = 1.6;
const SEAM_MM = 1;
const FOLD_MM = 1.4;
const STITCH_MM = 0.8;
const STITCH_DASH_MM = [5, 3.2];
const COVERED_DASH_MM = [3, 5];

/** Colours of a flat's parts and lines on one cloth. Lines stay readable on white and on black. */
export type ClothLook = {
  readonly fillOf: (part: FrozenFlat['parts'][number]) => string;
  readonly strokeOf: (line: FrozenFlat['lines'][number]) => LineStroke;
  readonly outline: LineStroke;
  /** What makes a heather cloth look it, to be drawn over the parts and under the lines. */
  readonly fibres: readonly { readonly d: string; readonly stroke: LineStroke }[];
};

/** How one side of a garment of this cloth looks: smaller things are drawn with finer lines. */
export function clothLook(
  { hex, heather, secondHex }: ClothHexes,
  { box, parts }: Pick<FrozenFlat, 'box' | 'parts'>,
): ClothLook {
  const first = clothColours(hex);
  const other = secondHex ? clothColours(secondHex) : first;
  const scale = lineScale(box);
  return {
    fillOf: ({ part, second }) => partFill(part, second ? other : first),
    strokeOf: ({ line, second }) => scaled(lineStroke(line, second ? other : first), scale),
    outline: scaled({ hex: first.outline, widthMm: OUTLINE_MM }, scale),
    fibres: heather ? fibresOf({ box, parts }, first) : [],
  };
}

function fibresOf(flat: Pick<FrozenFlat, 'box' | 'parts'>, { fibre }: ClothColours): ClothLook['fibres'] {
  return heatherFibres(flat).flatMap(({ tone, d, widthMm, dashMm }) => {
    const hex = fibre[tone];
    return hex ? [{ d, stroke: { hex, widthMm, dashMm: [...dashMm] } }] : [];
  });
}

/** The larger side of a garment whose lines have their full width, mm: an adult tee with its sleeves; for looks. */
const FULL_WIDTH_FROM_MM = 800;
const FINEST_SCALE = 0.45;

/**
 * How wide lines are drawn on a flat, as a share of their full width. It falls with the root of the flat's size, so that a
 * cap shown alone is not drawn in rope, and an infant's garment beside a grown person's is not drawn in hair.
 */
export function lineScale({ width, height }: Pick<Box, 'width' | 'height'>): number {
  return Math.min(1, Math.max(FINEST_SCALE, Math.sqrt(Math.max(width, height) / FULL_WIDTH_FROM_MM)));
}

function scaled({ hex, widthMm, dashMm }: LineStroke, scale: number): LineStroke {
  const short = (mm: number) => Math.round(mm * scale * 100) / 100;
  return { hex, widthMm: short(widthMm), ...(dashMm && { dashMm: dashMm.map(short) }) };
}

function partFill(part: ClothPart, colours: ClothColours): string {
  switch (part) {
    case 'insideBack':
      return colours.shade;
    case 'sleeve':
    case 'side':
      return colours.sleeve;
    case 'rib':
    case 'collar':
    case 'strap':
      return colours.rib;
    case 'metal':
      return colours.metal;
    case 'button':
      return colours.button;
    case 'body':
    case 'hood':
    case 'pocket':
      return colours.cloth;
  }
}

function lineStroke(line: FlatLineName, colours: ClothColours): LineStroke {
  switch (line) {
    case 'hemStitch':
    case 'sleeveStitch':
    case 'stitch':
      return { hex: colours.seam, widthMm: STITCH_MM, dashMm: STITCH_DASH_MM };
    case 'coveredSeam':
      return { hex: colours.fold, widthMm: SEAM_MM, dashMm: COVERED_DASH_MM };
    case 'ribKnit':
      return { hex: colours.fold, widthMm: STITCH_MM };
    case 'fold':
      return { hex: colours.fold, widthMm: FOLD_MM };
    case 'hoodEdge':
      return { hex: colours.seam, widthMm: OUTLINE_MM };
    case 'strapEdge':
    case 'brimEdge':
      return { hex: colours.outline, widthMm: OUTLINE_MM };
    default:
      return { hex: colours.seam, widthMm: SEAM_MM };
  }
}
