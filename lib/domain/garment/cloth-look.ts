import { type ClothColours, clothColours } from './cloth-colours';
import type { ClothPart, FlatLineName, FrozenFlat } from './flat';

/** The cloth a garment is made of: its colour, and that of its sleeves and ribs where they are of another. */
export type ClothHexes = { readonly hex: string; readonly secondHex?: string | undefined };

/** How a line is drawn: colour, width and dashes in millimetres. */
export type LineStroke = { hex: string; widthMm: number; dashMm?: number[] };

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
};

/** How a garment of this cloth looks. */
export function clothLook({ hex, secondHex }: ClothHexes): ClothLook {
  const first = clothColours(hex);
  const other = secondHex ? clothColours(secondHex) : first;
  return {
    fillOf: ({ part, second }) => partFill(part, second ? other : first),
    strokeOf: ({ line, second }) => lineStroke(line, second ? other : first),
    outline: { hex: first.outline, widthMm: OUTLINE_MM },
  };
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
