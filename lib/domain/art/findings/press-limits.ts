import { type Micrometres, UM_PER_MM, umFromInches } from '../../measure/length';
import { FAIR_INK_PX_PER_INCH, SHARP_INK_PX_PER_INCH } from '../sharpness';

/** What a supplier of transfers needs of a picture, and what the press takes. */
export type PressLimits = {
  /** Pixels of real detail to a printed inch: sharp from the first, soft under the second, a blur under the third. */
  readonly sharpPxPerInch: number;
  readonly fairPxPerInch: number;
  readonly blurPxPerInch: number;
  /** A line narrower than this may not stick, a gap narrower than this fills in. */
  readonly leastStrokeUm: Micrometres;
  readonly leastGapUm: Micrometres;
  /** The sheet or roll is this wide; a print may lie along it either way. */
  readonly sheetWidthUm: Micrometres;
  /** The largest print the press takes in one go. */
  readonly platenUm: { readonly widthUm: Micrometres; readonly heightUm: Micrometres };
};

/** Where no supplier says otherwise (common practice, no source). */
export const USUAL_PRESS_LIMITS: PressLimits = {
  sharpPxPerInch: SHARP_INK_PX_PER_INCH,
  fairPxPerInch: FAIR_INK_PX_PER_INCH,
  blurPxPerInch: 130,
  leastStrokeUm: 0.5 * UM_PER_MM,
  leastGapUm: 0.7 * UM_PER_MM,
  sheetWidthUm: umFromInches(22),
  platenUm: { widthUm: umFromInches(16), heightUm: umFromInches(20) },
};
