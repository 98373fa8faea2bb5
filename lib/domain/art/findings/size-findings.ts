import { type Micrometres, roundUm, UM_PER_INCH } from '../../measure/length';
import type { ArtFacts } from '../art-facts';
import type { FindingOf } from './art-finding';
import type { PressLimits } from './press-limits';
import { realInkWidthPx } from './real-detail';

/** How large a picture is printed: the width of its ink, on cloth. */
export type PrintedAt = { readonly widthUm: Micrometres; readonly limits: PressLimits };

/** The most flat colours a picture can have that is traced anew and still looks like itself (common practice, no source). */
const MOST_REDRAWN_COLOURS = 12;

/** Too few pixels of real detail for the printed inches. */
export function blurry(facts: ArtFacts, { widthUm, limits }: PrintedAt): FindingOf<'blurry'> | null {
  const realPx = realInkWidthPx({ inkWidthPx: facts.inkBox.width, facts });
  const pxPerInch = (realPx * UM_PER_INCH) / widthUm;
  // A width is rounded to whole micrometres: at the limit itself it passes.
  const reaches = (needed: number) => widthUm <= widthAt(realPx, needed);
  if (reaches(limits.sharpPxPerInch)) return null;
  const level = reaches(limits.fairPxPerInch) ? 'fair' : reaches(limits.blurPxPerInch) ? 'soft' : 'blur';
  return {
    code: 'blurry',
    severity: level === 'fair' ? 'notes' : 'stops',
    spots: [],
    numbers: { pxPerInch, level },
    mends: facts.look === 'drawn' && facts.colours.length <= MOST_REDRAWN_COLOURS ? ['redraw'] : [],
    passesAtWidthUm: widthAt(realPx, level === 'fair' ? limits.sharpPxPerInch : limits.fairPxPerInch),
  };
}

/** Lines too narrow to stick. */
export function thinStrokes(facts: ArtFacts, at: PrintedAt): FindingOf<'thinStrokes'> | null {
  const thin = tooThin(facts, facts.strokes, at.limits.leastStrokeUm, at.widthUm);
  const isOneColour = facts.oneColourHex !== null && facts.backing === null;
  return thin && { code: 'thinStrokes', severity: 'warns', ...thin, mends: isOneColour ? ['thicken'] : [] };
}

/** Gaps too narrow to stay open. */
export function thinGaps(facts: ArtFacts, at: PrintedAt): FindingOf<'thinGaps'> | null {
  const thin = tooThin(facts, facts.gaps, at.limits.leastGapUm, at.widthUm);
  return thin && { code: 'thinGaps', severity: 'warns', ...thin, mends: [] };
}

function tooThin(
  { inkBox }: ArtFacts,
  { thinnestPx, spots }: ArtFacts['strokes'],
  leastUm: Micrometres,
  widthUm: Micrometres,
): Pick<FindingOf<'thinStrokes'>, 'spots' | 'numbers' | 'passesAtWidthUm'> | null {
  const umPerPx = widthUm / inkBox.width;
  if (thinnestPx === null || thinnestPx * umPerPx >= leastUm) return null;
  return {
    spots: spots.filter(({ thicknessPx }) => thicknessPx * umPerPx < leastUm),
    numbers: { thinnestUm: roundUm(thinnestPx * umPerPx), leastUm },
    passesAtWidthUm: Math.ceil((leastUm * inkBox.width) / thinnestPx),
  };
}

/** More than a sheet is wide, whichever way it lies, or more than the platen takes. */
export function tooLarge({ inkBox }: ArtFacts, { widthUm, limits }: PrintedAt): FindingOf<'tooLarge'> | null {
  const heightUm = roundUm((widthUm * inkBox.height) / inkBox.width);
  const { platenUm, sheetWidthUm } = limits;
  const isPastSheet = Math.min(widthUm, heightUm) > sheetWidthUm;
  const isPastPlaten = widthUm > platenUm.widthUm || heightUm > platenUm.heightUm;
  if (!isPastSheet && !isPastPlaten) return null;
  const asTall = inkBox.height / inkBox.width;
  const onPlaten = Math.min(platenUm.widthUm, platenUm.heightUm / asTall);
  const onSheet = Math.max(sheetWidthUm, sheetWidthUm / asTall);
  return {
    code: 'tooLarge',
    severity: 'warns',
    spots: [],
    numbers: { than: isPastSheet ? 'sheet' : 'platen', widthUm, heightUm },
    mends: [],
    passesAtWidthUm: Math.floor(Math.min(onPlaten, onSheet)),
  };
}

function widthAt(realPx: number, pxPerInch: number): Micrometres {
  return roundUm((realPx / pxPerInch) * UM_PER_INCH);
}
