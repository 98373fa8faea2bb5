import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { USUAL_PRESS_LIMITS } from '@/lib/domain/art/findings/press-limits';
import type { MendName, MendStep } from '@/lib/domain/art/mend/recipe';
import { suggestedScale, suggestedStep } from '@/lib/domain/art/mend/suggest-step';
import { inkPxPerInch } from '@/lib/domain/art/sharpness';
import type { Micrometres } from '@/lib/domain/measure/length';

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
const DOT_ROWS_PER_INCH = 30;
const DOT_TURN_CENTIDEG = 2_250;
const MOST_STARTING_COLOURS = 6;
/** A colour with less of the ink than this is more likely an edge than a colour (by eye). */
const LEAST_COLOUR_SHARE = 0.01;

/** A step as it is first tried: as the check suggests it, and where it sees no cause for it, something to begin with. */
export function startingStep(mend: MendName, { facts, widthUm, cloths }: MendStart): MendStep {
  const { backing, inkBox, colours } = facts;
  const purpose = {
    widthsUm: { least: widthUm, most: widthUm },
    cloths: cloths.map(({ hex }) => hex),
    leastStrokeUm: USUAL_PRESS_LIMITS.leastStrokeUm,
  };
  switch (mend) {
    case 'knockOut':
      return {
        mend,
        hex: backing?.hex ?? colours[0]?.hex ?? '#FFFFFF',
        tolerance: BACKING_TOLERANCE,
        fromEdges: true,
        enclosed: [],
      };
    case 'hardenEdge':
      return { mend, alpha: HALF_CLEAR };
    case 'redraw': {
      const main = colours.filter(({ share }, index) => index === 0 || share >= LEAST_COLOUR_SHARE);
      const few = main.slice(0, MOST_STARTING_COLOURS).map(({ hex }) => hex);
      return { mend, colours: few, scale: suggestedScale(facts, purpose) };
    }
    default:
      return suggestedStep(mend, facts, purpose) ?? plainStep(mend, inkBox, inkPxPerInch(inkBox.width, widthUm));
  }
}

function plainStep(
  mend: Exclude<MendName, 'knockOut' | 'hardenEdge' | 'redraw'>,
  inkBox: ArtFacts['inkBox'],
  pxPerInch: number,
): MendStep {
  switch (mend) {
    case 'crop':
      return { mend, box: { ...inkBox } };
    case 'erase':
      return { mend, boxes: [] };
    case 'clearSpecks':
      return { mend, smallerThanPx: SPECK_PX };
    case 'thicken':
      return { mend, byPx: 1 };
    case 'dots': {
      const cellPx = Math.min(400, Math.max(2, Math.round(pxPerInch / DOT_ROWS_PER_INCH)));
      return { mend, cellPx, turnCentideg: DOT_TURN_CENTIDEG };
    }
    case 'recolour':
      return { mend, hex: '#FFFFFF' };
    case 'turn':
      return { mend, quarters: 1 };
    case 'trim':
      return { mend };
  }
}

/** Mends whose settings are better read off all pixels of the picture than off what the check measured. */
export function isReadOffPixels(mend: MendName): boolean {
  return mend === 'knockOut' || mend === 'hardenEdge' || mend === 'redraw';
}
