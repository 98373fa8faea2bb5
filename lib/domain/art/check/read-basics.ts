import type { ArtFacts, Spot } from '../art-facts';
import type { Ink } from '../ink';
import { backingFacts, backingRule, isBacking, mayBeBacking } from './backing';
import { type Ground, groundOf } from './ground';
import { inkColours, oneColour } from './ink-colours';
import { junkOf } from './junk';
import { lookOf } from './look';
import { asWords, type PixelBytes, type PixelWords } from './pixel-classes';
import { rimColour } from './rim-colour';
import { type AreaScan, scanArea } from './scan-area';
import { speckPx } from './specks';
import { tallyPixels } from './tally';

/** What is known of a picture after one look at all its pixels: what it is made of, and what lies round it. */
export type BasicFacts = Pick<ArtFacts, 'inkPx' | 'look' | 'backing' | 'colours' | 'oneColourHex' | 'junk'>;

/** The basic facts, with what the others are measured from: the area inside of bars, and the scan of it, if it has one. */
export type Basics = BasicFacts & {
  readonly words: PixelWords;
  readonly area: Spot;
  readonly scan: AreaScan | null;
};

/** An enclosed place of the backing's colour is worth a click from here on: less is a JPEG's noise. */
const LEAST_ENCLOSED_PX = 12;
/** A photograph's backing is measured to about so many of its pixels, not to each. */
const COARSE_PX = 2_500_000;

/**
 * Looks at all pixels once. `ink` is what `inkOfPixels` found in the same pixels; `forCells` marks the ink besides, for what
 * is measured from it.
 */
export function readBasics(pixels: PixelBytes, ink: Ink, forCells: boolean): Basics {
  const words = asWords(pixels);
  // What hangs on a telephone's screen round a picture would hide the picture's own ground.
  const { bars, rest: area } = ink.anyClear ? { bars: [], rest: ink.inkBox } : junkOf(words, ink.inkBox);
  const rim = rimColour(words, area);
  const fillsPicture = !ink.anyClear || ink.inkBox.width * ink.inkBox.height === words.widthPx * words.heightPx;
  const candidate = rim && mayBeBacking(rim, fillsPicture) ? groundOf(words, area, rim) : null;
  const basics =
    (candidate && readOn(words, area, candidate, { ink, forCells })) ?? readOn(words, area, null, { ink, forCells });
  if (!basics) throw new Error(`readBasics: nothing was read of ${words.widthPx} × ${words.heightPx} px`);
  const beyond = ink.anyClear ? 0 : words.widthPx * words.heightPx - area.width * area.height;
  return { ...basics, junk: bars, inkPx: basics.inkPx + beyond };
}

/** Reads an area with a rim's colour taken for a backing; null when it turns out to be none. */
function readOn(
  words: PixelWords,
  area: Spot,
  rim: Ground | null,
  { ink, forCells }: { readonly ink: Ink; readonly forCells: boolean },
): Omit<Basics, 'junk'> | null {
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
          every: rule && look === 'photograph' ? Math.max(1, Math.round(Math.sqrt(areaPx / COARSE_PX))) : 1,
          forCells,
          forHaze: !rule && tally.wideHalfClear > 0,
        })
      : null;
  const backing = rim && scan && backingFacts(rim, scan, words.widthPx * words.heightPx);
  if (rim && !backing) return null;
  return {
    words,
    area,
    scan,
    inkPx: scan && ink.anyClear ? scan.inkPx : areaPx,
    look,
    backing,
    colours,
    oneColourHex: oneColour(tally, rim),
  };
}
