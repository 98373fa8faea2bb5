import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { USUAL_PRESS_LIMITS } from '@/lib/domain/art/findings/press-limits';
import type { MendName, MendStep } from '@/lib/domain/art/mend/recipe';
import { inkPxPerInch, SHARP_INK_PX_PER_INCH } from '@/lib/domain/art/sharpness';
import { relativeLuminance } from '@/lib/domain/garment/cloth-colours';
import { type Micrometres, UM_PER_INCH } from '@/lib/domain/measure/length';
import { boxWithoutBars } from './box-edits';

/** What a mend is begun from: the picture as it is now, how wide it prints, and the cloth it prints on. */
export type MendStart = {
  readonly facts: ArtFacts;
  readonly widthUm: Micrometres;
  readonly cloths: readonly { readonly hex: string }[];
};

/** A colour counts as the backing's own up to this ΔE00: what a JPEG makes of one flat colour (by eye). */
const BACKING_TOLERANCE = 8;
const SPECK_PX = 24;
const HALF_CLEAR = 128;
/** Rows of dots to the inch, and their turn (common practice, no source). */
const DOT_ROWS_PER_INCH = 35;
const DOT_TURN_CENTIDEG = 2_250;
const MOST_STARTING_COLOURS = 6;
/** A colour with less of the ink than this is more likely an edge than a colour (by eye). */
const LEAST_COLOUR_SHARE = 0.01;
const DARK_CLOTH = 0.18;

const LIGHT_INK = '#FFFFFF';
const DARK_INK = '#24222B';

/** A step as it is first tried. A box to cut to, a backing, a threshold are taken from what the check measured. */
export function startingStep(mend: MendName, { facts, widthUm, cloths }: MendStart): MendStep {
  const { widthPx, heightPx, backing, junk, specks, inkBox, colours } = facts;
  const pxPerInch = inkPxPerInch(inkBox.width, widthUm);
  switch (mend) {
    case 'crop':
      return { mend, box: junk.length > 0 ? boxWithoutBars(junk, { widthPx, heightPx }) : { ...inkBox } };
    case 'erase':
      return { mend, boxes: [] };
    case 'trim':
      return { mend };
    case 'knockOut':
      return {
        mend,
        hex: backing?.hex ?? colours[0]?.hex ?? LIGHT_INK,
        tolerance: BACKING_TOLERANCE,
        fromEdges: true,
        enclosed: [],
      };
    case 'clearSpecks':
      return {
        mend,
        smallerThanPx: Math.max(SPECK_PX, ...specks.spots.map(({ width, height }) => width * height + 1)),
      };
    case 'hardenEdge':
      return { mend, alpha: HALF_CLEAR };
    case 'recolour':
      return { mend, hex: cloths.some(({ hex }) => relativeLuminance(hex) < DARK_CLOTH) ? LIGHT_INK : DARK_INK };
    case 'thicken':
      return {
        mend,
        byPx: thickenBy((USUAL_PRESS_LIMITS.leastStrokeUm * pxPerInch) / UM_PER_INCH, facts.strokes.thinnestPx),
      };
    case 'dots':
      return {
        mend,
        cellPx: Math.min(400, Math.max(2, Math.round(pxPerInch / DOT_ROWS_PER_INCH))),
        turnCentideg: DOT_TURN_CENTIDEG,
      };
    case 'redraw': {
      const main = colours.filter(({ share }, index) => index === 0 || share >= LEAST_COLOUR_SHARE);
      return {
        mend,
        colours: main.slice(0, MOST_STARTING_COLOURS).map(({ hex }) => hex),
        scale: Math.min(8, Math.max(1, Math.ceil(SHARP_INK_PX_PER_INCH / pxPerInch))),
      };
    }
    case 'turn':
      return { mend, quarters: 1 };
  }
}

/** Half of what a stroke lacks, since it grows on both sides; in halves of a px. */
function thickenBy(neededPx: number, thinnestPx: number | null): number {
  const lacking = neededPx - (thinnestPx ?? neededPx);
  return Math.min(100, Math.max(1, Math.ceil(lacking) / 2));
}
