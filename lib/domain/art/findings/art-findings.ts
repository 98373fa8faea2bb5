import type { Micrometres } from '../../measure/length';
import type { ArtFacts } from '../art-facts';
import type { ArtNote } from '../art-notes';
import { type ArtFinding, FINDING_CODES, SEVERITIES } from './art-finding';
import { colour, emptyMargin, enlarged, haze, junk, specks, whiteBox, wholeRectangle } from './picture-findings';
import { type PressLimits, USUAL_PRESS_LIMITS } from './press-limits';
import { blurry, thinGaps, thinStrokes, tooLarge } from './size-findings';
import { type ClothColour, vanishes } from './vanishes';

/** How a picture is printed: the width of its ink, and every cloth it comes on. */
export type PrintedArt = {
  readonly widthUm: Micrometres;
  readonly cloths: readonly ClothColour[];
  /** The supplier's; common practice where left out. */
  readonly limits?: PressLimits;
};

/**
 * What will go wrong with a picture on cloth at the size it is printed, what stops a revision first. Takes microseconds: it
 * can be asked anew at each move while a print is resized.
 */
export function artFindings(
  facts: ArtFacts,
  notes: readonly ArtNote[],
  { widthUm, cloths, limits = USUAL_PRESS_LIMITS }: PrintedArt,
): ArtFinding[] {
  if (!(widthUm > 0)) throw new Error(`artFindings: a print ${widthUm} µm wide`);
  const at = { widthUm, limits };
  const found: readonly (ArtFinding | null)[] = [
    blurry(facts, at),
    whiteBox(facts),
    junk(facts),
    vanishes(facts, cloths),
    haze(facts, widthUm),
    thinStrokes(facts, at),
    thinGaps(facts, at),
    tooLarge(facts, at),
    specks(facts),
    enlarged(facts),
    wholeRectangle(facts, notes),
    colour(notes),
    emptyMargin(facts),
  ];
  return found.filter((finding) => finding !== null).sort(heaviestFirst);
}

function heaviestFirst(one: ArtFinding, other: ArtFinding): number {
  return (
    SEVERITIES.indexOf(one.severity) - SEVERITIES.indexOf(other.severity) ||
    FINDING_CODES.indexOf(one.code) - FINDING_CODES.indexOf(other.code)
  );
}
