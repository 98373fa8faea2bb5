import type { ArtFacts } from '../art-facts';
import { type InkColour, shareOfFirst } from './ink-colours';
import type { Tally } from './tally';

/** So few colours make up a drawing, and so much of it (common practice, no source). */
const FEW_COLOURS = 8;
const FEW_COLOURS_SHARE = 0.85;
/** Half of the pixels of a drawing lie in flat colour; a photograph has hardly any that do. */
const FLAT_PAIRS = 0.5;
/** Lines too fine to hold two pixels a little apart say nothing about flatness. */
const LEAST_PAIRS = 200;

/** Whether a picture is made of flat colours or is a photograph. Of an airbrushed fade it says what it looks like most. */
export function lookOf({ pairs, alikePairs }: Tally, colours: readonly InkColour[]): ArtFacts['look'] {
  if (pairs >= LEAST_PAIRS && alikePairs / pairs >= FLAT_PAIRS) return 'drawn';
  return shareOfFirst(colours, FEW_COLOURS) >= FEW_COLOURS_SHARE ? 'drawn' : 'photograph';
}
