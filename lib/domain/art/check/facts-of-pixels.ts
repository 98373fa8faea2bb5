import { ART_FACTS_FORMAT, type ArtFacts } from '../art-facts';
import type { Ink } from '../ink';
import { hexChannelDifference } from './backing';
import { detailShareOf } from './detail';
import { distanceRoom } from './edge-distance';
import { hazeOf } from './haze';
import type { PixelBytes, PixelWords } from './pixel-classes';
import { type BasicFacts, readBasics } from './read-basics';
import type { AreaScan, InkCells } from './scan-area';
import { specksOf } from './specks';
import { thicknessOf } from './thickness';

/**
 * Measures what the pixels of an upright sRGB picture say whatever size it is printed at. `ink` is what `inkOfPixels` found
 * in the same pixels. Where there is a backing, colours, strokes, gaps and specks are those of what lies on it.
 */
export function factsOfPixels(pixels: PixelBytes, ink: Ink): ArtFacts {
  const { words, area, scan, ...basic } = readBasics(pixels, ink, true);
  const detailShare = detailShareOf(words, area, basic.look, ink.anyClear);
  return {
    format: ART_FACTS_FORMAT,
    widthPx: pixels.widthPx,
    heightPx: pixels.heightPx,
    inkBox: ink.inkBox,
    ...basic,
    detailShare,
    ...(scan?.ink ? measuredIn(words, scan, scan.ink, basic, detailShare) : NOTHING_MEASURED),
  };
}

type Measured = Pick<ArtFacts, 'haze' | 'strokes' | 'gaps' | 'specks'>;

const NO_HAZE: ArtFacts['haze'] = { share: 0, reachPx: 0, spots: [] };
const NO_THICKNESS: ArtFacts['strokes'] = { thinnestPx: null, spots: [] };
const NOTHING_MEASURED: Measured = {
  haze: NO_HAZE,
  strokes: NO_THICKNESS,
  gaps: NO_THICKNESS,
  specks: { count: 0, spots: [] },
};

function measuredIn(
  pixels: PixelWords,
  scan: AreaScan,
  ink: InkCells,
  basic: BasicFacts,
  detailShare: number,
): Measured {
  const { look, backing, oneColourHex, inkPx } = basic;
  const room = distanceRoom(ink.firm);
  const haze = ink.haze ? hazeOf(ink.haze, detailShare, inkPx, room) : NO_HAZE;
  const specks = specksOf(pixels, scan, ink.small);
  // A photograph on a backing has bright places inside that are no gaps, and an outline that is no stroke.
  if (look === 'photograph' && backing) return { haze, strokes: NO_THICKNESS, gaps: NO_THICKNESS, specks };
  const rule = scan.backing;
  const fullDifference = rule && oneColourHex ? hexChannelDifference(oneColourHex, rule) : null;
  const field = { pixels, area: scan.area, backing: rule, fullDifference };
  const strokes = thicknessOf(ink.firm, { ...field, inside: 'ink' }, room);
  return { haze, strokes, gaps: thicknessOf(ink.open, { ...field, inside: 'room' }, room), specks };
}

/** The part of the facts that one look at all pixels gives: the ink, its colours, and the backing. */
export function basicFactsOfPixels(pixels: PixelBytes, ink: Ink): BasicFacts {
  const { inkPx, look, backing, colours, oneColourHex, junk } = readBasics(pixels, ink, false);
  return { inkPx, look, backing, colours, oneColourHex, junk };
}
