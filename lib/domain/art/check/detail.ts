import type { ArtFacts, Spot } from '../art-facts';
import { countSteps, noSteps, repeatsOf, type StepCounts } from './block-repeats';
import { countEdges, noEdges, sharpestEdgePx } from './edge-widths';
import type { PixelWords } from './pixel-classes';
import { type Strength, sampledLines } from './sampled-lines';

/** Lines that are looked at: columns cost more, their pixels lie far apart in memory. */
const MOST_ROWS = 180;
const MOST_COLUMNS = 110;

/** Up to here edges are as sharp as pixels can show, however they lie between them. Pixels (measured on pictures). */
const SHARP_EDGE_PX = 1.6;
/**
 * A picture of a few straight edges, as a flag's, may have every one of them between two pixels, and a JPEG of it blurs
 * them besides: it is told by wider edges only.
 */
const STRAIGHT_EDGE_PX = 2.4;
/** A JPEG keeps colours for two pixels at once, and smooths them when it is opened: edges of colour alone are this wide. */
const COLOUR_EDGE_PX = 3.2;
/** Rows and columns at which such a picture changes, with what a JPEG leaves beside them. */
const FEW_PLACES = 40;
/** The sharpest edges of an original; an enlarged picture's are as many times wider as it was enlarged by. */
const ORIGINAL_EDGE_PX = { drawn: 1.05, photograph: 1.15 };

/**
 * How much of a picture's detail along a side is real: 1 for an original, about 1 / k for one that was enlarged k times,
 * smoothly or by repeating pixels. 1 also where a picture has too few edges to say.
 */
export function detailShareOf(pixels: PixelWords, area: Spot, look: ArtFacts['look'], anyClear: boolean): number {
  const bright = edgesSeen(pixels, area, anyClear ? 'clear' : 'bright');
  if (bright.places >= FEW_PLACES) return shareOf(bright, look, SHARP_EDGE_PX);
  // Colours that are as bright as each other are told apart by how warm they are.
  const warm = anyClear ? null : edgesSeen(pixels, area, 'warm');
  if (!warm || warm.places <= bright.places || warm.repeats === 2) return shareOf(bright, look, STRAIGHT_EDGE_PX);
  return shareOf(warm, look, COLOUR_EDGE_PX);
}

type EdgesSeen = { readonly edgePx: number | null; readonly repeats: number; readonly places: number };

function edgesSeen(pixels: PixelWords, area: Spot, by: Strength): EdgesSeen {
  const edges = noEdges();
  const across = noSteps(area.width);
  const down = noSteps(area.height);
  for (const [along, most, steps] of [
    ['rows', MOST_ROWS, across],
    ['columns', MOST_COLUMNS, down],
  ] as const) {
    for (const sampled of sampledLines(pixels, area, along, most, by)) {
      countEdges(sampled, edges);
      countSteps(sampled.line, steps);
    }
  }
  return {
    edgePx: sharpestEdgePx(edges),
    repeats: repeatsOf(across, down),
    places: placesOf(across) + placesOf(down),
  };
}

function shareOf({ edgePx, repeats }: EdgesSeen, look: ArtFacts['look'], sharpPx: number): number {
  if (repeats > 1) return 1 / repeats;
  return edgePx === null || edgePx <= sharpPx ? 1 : Math.min(1, ORIGINAL_EDGE_PX[look] / edgePx);
}

function placesOf({ seen }: StepCounts): number {
  return seen.reduce((places, count) => (count > 0 ? places + 1 : places), 0);
}
