import { type Micrometres, UM_PER_INCH } from '../../measure/length';
import type { ArtFacts, Spot } from '../art-facts';
import { labOfHex } from '../colour/lab';
import { SHARP_INK_PX_PER_INCH } from '../sharpness';
import type { MendName, MendStep } from './recipe';

/** Mends whose settings follow from what is known of a picture, without looking at its pixels again. */
export type FactsMend = Exclude<MendName, 'knockOut' | 'hardenEdge' | 'redraw'>;

/** Where a picture is meant to go: what a mend's settings depend on besides the picture itself. */
export type MendPurpose = {
  /** The narrowest and the widest its ink is printed; null where it is on no print yet. */
  readonly widthsUm: { readonly least: Micrometres; readonly most: Micrometres } | null;
  /** The cloths it is printed on, `#RRGGBB`. */
  readonly cloths: readonly string[];
  /** A line narrower than this may not stick. */
  readonly leastStrokeUm: Micrometres;
};

/** Rows of dots to a printed inch: the smallest dots of a quarter fade still hold (common practice, no source). */
const DOT_ROWS_PER_INCH = 30;

/** Rows of one colour's dots are turned so that no eye follows them (common practice, no source). */
const DOT_TURN_CENTIDEG = 2_250;

/** Ink for dark cloth and for light. */
const LIGHT_INK = '#FFFFFF';
const DARK_INK = '#1A1A1A';

/** Lightness, L*, at which cloth is neither. */
const MIDDLE_LIGHTNESS = 55;

/** The settings a mend could begin with; null where the picture gives no cause for it. */
export function suggestedStep(mend: FactsMend, facts: ArtFacts, purpose: MendPurpose): MendStep | null {
  switch (mend) {
    case 'crop': {
      const box = withoutJunk(facts);
      return box && { mend, box };
    }
    case 'erase':
      return facts.junk.length > 0 ? { mend, boxes: [...facts.junk] } : null;
    case 'trim':
      return isTrimmed(facts) ? null : { mend };
    case 'clearSpecks': {
      const largest = Math.max(0, ...facts.specks.spots.map(({ width, height }) => width * height));
      return largest > 0 ? { mend, smallerThanPx: Math.min(100_000, largest + 1) } : null;
    }
    case 'recolour':
      return { mend, hex: inkFor(purpose.cloths) };
    case 'thicken': {
      const byPx = thickenPx(facts, purpose);
      return byPx === null ? null : { mend, byPx };
    }
    case 'dots': {
      if (facts.haze.share === 0) return null;
      const cellPx = inkPxPerInchAtLeast(facts, purpose) / DOT_ROWS_PER_INCH;
      return { mend, cellPx: Math.min(400, Math.max(2, round(cellPx))), turnCentideg: DOT_TURN_CENTIDEG };
    }
    case 'turn':
      return { mend, quarters: 1 };
  }
}

/** How many times as large a redrawing has to be so that its widest print is sharp; never more than eight. */
export function suggestedScale({ inkBox }: ArtFacts, { widthsUm }: MendPurpose): number {
  const widestInches = (widthsUm?.most ?? USUAL_WIDTH_UM) / UM_PER_INCH;
  return Math.min(8, Math.max(1, Math.ceil((widestInches * SHARP_INK_PX_PER_INCH) / inkBox.width)));
}

/** A full front, where nothing says how wide the picture is meant to be. */
const USUAL_WIDTH_UM = 10 * UM_PER_INCH;

/** What lies between the bars along the sides; null where there are none, or where they leave nothing. */
function withoutJunk({ widthPx, heightPx, junk }: ArtFacts): Spot | null {
  let [left, top, right, bottom] = [0, 0, widthPx, heightPx];
  for (const { x, y, width, height } of junk) {
    if (width >= widthPx * 0.9) {
      if (y + height / 2 < heightPx / 2) top = Math.max(top, y + height);
      else bottom = Math.min(bottom, y);
    } else if (height >= heightPx * 0.9) {
      if (x + width / 2 < widthPx / 2) left = Math.max(left, x + width);
      else right = Math.min(right, x);
    }
  }
  const isCut = left > 0 || top > 0 || right < widthPx || bottom < heightPx;
  return isCut && right > left && bottom > top ? { x: left, y: top, width: right - left, height: bottom - top } : null;
}

function isTrimmed({ widthPx, heightPx, inkBox }: ArtFacts): boolean {
  return inkBox.width === widthPx && inkBox.height === heightPx;
}

/** Light ink where the cloths are dark on the whole, dark ink where they are light; light where none is known. */
function inkFor(cloths: readonly string[]): string {
  if (cloths.length === 0) return LIGHT_INK;
  const lightness = cloths.reduce((sum, hex) => sum + labOfHex(hex).l, 0) / cloths.length;
  return lightness < MIDDLE_LIGHTNESS ? LIGHT_INK : DARK_INK;
}

/** Half of what the thinnest stroke lacks where it is printed smallest, to a tenth of a pixel; null where none lacks any. */
function thickenPx(facts: ArtFacts, purpose: MendPurpose): number | null {
  const { thinnestPx } = facts.strokes;
  if (thinnestPx === null || facts.oneColourHex === null) return null;
  const neededPx = (purpose.leastStrokeUm / UM_PER_INCH) * inkPxPerInchAtLeast(facts, purpose);
  const lackingPx = Math.ceil(((neededPx - thinnestPx) / 2) * 10) / 10;
  return lackingPx > 0 ? Math.min(100, lackingPx) : null;
}

/** Ink pixels to a printed inch where the picture is printed smallest; as if it were just sharp where it is on no print. */
function inkPxPerInchAtLeast({ inkBox }: ArtFacts, { widthsUm }: MendPurpose): number {
  return widthsUm ? (inkBox.width * UM_PER_INCH) / widthsUm.least : SHARP_INK_PX_PER_INCH;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
