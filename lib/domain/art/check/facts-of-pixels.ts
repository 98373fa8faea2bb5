import { ART_FACTS_FORMAT, type ArtFacts, type Spot } from '../art-facts';
import type { Ink } from '../ink';
import { backingFacts, backingRule, hexChannelDifference, isBacking, mayBeBacking } from './backing';
import { type Ground, groundOf } from './ground';
import { hazeOf } from './haze';
import { inkColours, oneColour } from './ink-colours';
import { lookOf } from './look';
import { asWords, type PixelBytes, type PixelWords } from './pixel-classes';
import { rimColour } from './rim-colour';
import { type AreaScan, scanArea } from './scan-area';
import { speckPx, specksOf } from './specks';
import { type Tally, tallyPixels } from './tally';
import { thicknessOf } from './thickness';

/** An enclosed place of the backing's colour is worth a click from here on: less is a JPEG's noise. */
const LEAST_ENCLOSED_PX = 12;
/** Half-clear ink is looked into when there is more of it than smooth edges have. */
const HALF_CLEAR_SHARE = 0.002;

/** What is known of a picture after one look at all its pixels: what it is made of, and what lies round it. */
export type BasicFacts = Pick<ArtFacts, 'inkPx' | 'look' | 'backing' | 'colours' | 'oneColourHex'>;

/**
 * Measures what the pixels of an upright sRGB picture say whatever size it is printed at. `ink` is what `inkOfPixels` found
 * in the same pixels. Where there is a backing, colours, strokes, gaps and specks are those of what lies on it.
 */
export function factsOfPixels(pixels: PixelBytes, ink: Ink): ArtFacts {
  const { words, scan, tally, ...basic } = readBasics(pixels, ink);
  const detailShare = 1;
  return {
    format: ART_FACTS_FORMAT,
    widthPx: pixels.widthPx,
    heightPx: pixels.heightPx,
    inkBox: ink.inkBox,
    ...basic,
    junk: [],
    haze: scan?.solid ? hazeOf(words, scan.solid, detailShare, basic.inkPx) : NO_HAZE,
    detailShare,
    ...thicknesses(words, scan, basic),
    specks: scan ? specksOf(words, scan) : NO_SPECKS,
  };
}

const NO_HAZE: ArtFacts['haze'] = { share: 0, reachPx: 0, spots: [] };
const NO_SPECKS: ArtFacts['specks'] = { count: 0, spots: [] };
const NO_THICKNESS: ArtFacts['strokes'] = { thinnestPx: null, spots: [] };

/** A photograph on a backing has bright places inside that are no gaps, and an outline that is no stroke. */
function thicknesses(pixels: PixelWords, scan: AreaScan | null, { look, backing, oneColourHex }: BasicFacts) {
  if (!scan || (look === 'photograph' && backing)) return { strokes: NO_THICKNESS, gaps: NO_THICKNESS };
  const rule = scan.backing;
  const fullDifference = rule && oneColourHex ? hexChannelDifference(oneColourHex, rule) : null;
  const field = { pixels, area: scan.area, backing: rule, fullDifference };
  return {
    strokes: thicknessOf(scan.firm, { ...field, inside: 'ink' }),
    gaps: thicknessOf(scan.open, { ...field, inside: 'room' }),
  };
}

/** The part of the facts that one look at all pixels gives: the ink, its colours, and the backing. */
export function basicFactsOfPixels(pixels: PixelBytes, ink: Ink): BasicFacts {
  const { inkPx, look, backing, colours, oneColourHex } = readBasics(pixels, ink);
  return { inkPx, look, backing, colours, oneColourHex };
}

type Basics = BasicFacts & { readonly words: PixelWords; readonly scan: AreaScan | null; readonly tally: Tally };

function readBasics(pixels: PixelBytes, ink: Ink): Basics {
  const words = asWords(pixels);
  const area: Spot = ink.inkBox;
  const rim = rimColour(words, area);
  const fillsPicture = area.width * area.height === words.widthPx * words.heightPx;
  const candidate = rim && mayBeBacking(rim, fillsPicture) ? groundOf(words, area, rim) : null;
  const basics = (candidate && readOn(words, area, candidate, ink)) ?? readOn(words, area, null, ink);
  if (!basics) throw new Error(`readBasics: nothing was read of ${words.widthPx} × ${words.heightPx} px`);
  return basics;
}

/** Reads an area with a rim's colour taken for a backing; null when it turns out to be none. */
function readOn(words: PixelWords, area: Spot, rim: Ground | null, ink: Ink): Basics | null {
  const tally = tallyPixels(words, area, rim);
  const colours = inkColours(tally, rim);
  const look = lookOf(tally, colours);
  if (rim && !isBacking(rim, look)) return null;

  const areaPx = area.width * area.height;
  const rule = rim && backingRule(rim, colours);
  const longPx = Math.max(area.width, area.height);
  const scan =
    rule || ink.anyClear
      ? scanArea(words, area, {
          backing: rule,
          smallPx: speckPx(longPx),
          enclosedPx: Math.max(LEAST_ENCLOSED_PX, (longPx / 400) ** 2),
          withSolid: !rule && tally.halfClear > HALF_CLEAR_SHARE * tally.ink,
        })
      : null;
  const backing = rim && scan && backingFacts(rim, scan, words.widthPx * words.heightPx);
  if (rim && !backing) return null;
  return {
    words,
    scan,
    tally,
    inkPx: scan?.inkPx ?? areaPx,
    look,
    backing,
    colours,
    oneColourHex: oneColour(tally, rim),
  };
}
