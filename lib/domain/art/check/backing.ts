import type { ArtFacts, Spot } from '../art-facts';
import { MOST_SPOTS } from '../art-facts';
import { hexOfRgb, rgbOfHex } from '../colour/lab';
import type { Ground } from './ground';
import type { InkColour } from './ink-colours';
import { type BackingRule, FIRM_ALPHA } from './pixel-classes';
import type { RimColour } from './rim-colour';
import type { AreaScan } from './scan-area';

/** A rim colour that is looked into: half of the rim at least has it. */
const LEAST_RIM = 0.5;
/** With so much of the rim, it is a backing whatever is drawn on it. */
const WHOLE_RIM = 0.85;
/** Art may touch an edge or be cut off by one: three sides are then enough. */
const WHOLE_SIDE = 0.6;
/** A box pasted on a clear ground is only taken for a backing when it is nearly white all round. */
const WHITE_FROM = 232;
const BOX_RIM = 0.95;
/** Less than this of the area is a frame of a pixel or two, and no backing. */
const LEAST_SHARE = 0.01;

/** Whether a rim's colour may be a backing at all, before anything of the picture inside is known. */
export function mayBeBacking(rim: RimColour, fillsPicture: boolean): boolean {
  if (fillsPicture) return rim.share >= LEAST_RIM;
  return rim.share >= BOX_RIM && rim.corners === 4 && Math.min(rim.red, rim.green, rim.blue) >= WHITE_FROM;
}

/**
 * Whether a rim's colour is a backing: a rectangular photograph has a plain sky or wall along one or two of its sides, a
 * drawing on paper has paper on three at least.
 */
export function isBacking(rim: RimColour, look: ArtFacts['look']): boolean {
  if (rim.share >= WHOLE_RIM) return true;
  const sides = rim.sideShares.filter((share) => share >= WHOLE_SIDE).length;
  return look === 'drawn' && sides >= 3 && rim.corners >= 2;
}

/** From which difference a pixel is drawn on the backing, and firmly: half of the way to the palest of the main colours. */
export function backingRule(rim: Ground, colours: readonly InkColour[]): BackingRule {
  const { tolerance } = rim;
  const contrasts = colours.filter(({ share }) => share >= 0.03).map(({ hex }) => hexChannelDifference(hex, rim));
  const firm = Math.min(FIRM_ALPHA, Math.max(tolerance + 1, Math.round(Math.min(255, ...contrasts) / 2)));
  return { red: rim.red, green: rim.green, blue: rim.blue, tolerance, firm };
}

/** The greatest difference of a channel, 0 to 255, between a colour given as `#RRGGBB` and a backing's. */
export function hexChannelDifference(
  hex: string,
  { red, green, blue }: Pick<RimColour, 'red' | 'green' | 'blue'>,
): number {
  const [r, g, b] = rgbOfHex(hex);
  return Math.max(Math.abs(r - red), Math.abs(g - green), Math.abs(b - blue));
}

/** The backing as it was found, and null when hardly anything of the picture has its colour. */
export function backingFacts(rim: RimColour, scan: AreaScan, picturePx: number): ArtFacts['backing'] {
  if (scan.joinedPx < LEAST_SHARE * scan.area.width * scan.area.height) return null;
  const enclosed = scan.enclosed.slice(0, MOST_SPOTS).map(({ x, y, width, height }): Spot => ({ x, y, width, height }));
  return {
    hex: hexOfRgb(rim.red, rim.green, rim.blue),
    share: scan.joinedPx / picturePx,
    rimShare: rim.share,
    enclosed,
  };
}
