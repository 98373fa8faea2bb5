import type { Spot } from '../art-facts';
import { INK_ALPHA } from '../ink';
import type { Ground } from './ground';
import { channelDifference, FIRM_ALPHA, type PixelWords, SOLID_ALPHA } from './pixel-classes';

/** What a sample of a picture's pixels adds up to; where there is a rim colour, of those that do not have it. */
export type Tally = {
  /** Every so many rows and columns were looked at. */
  readonly step: number;
  /** Sampled pixels that print. */
  ink: number;
  /** Of them, half clear with half-clear ones a few pixels off to every side: more than an edge. */
  wideHalfClear: number;
  /** Pairs of ink some pixels apart, and those of them that have one colour. */
  pairs: number;
  alikePairs: number;
  /** Firm pixels whose neighbours have their colour, by 5 bits a channel; and all firm pixels the same way. */
  readonly inner: ColourBoxes;
  readonly all: ColourBoxes;
};

/** Counts of colours in boxes of 8 × 8 × 8 levels, each with the colour that is commonest inside it. */
export type ColourBoxes = { readonly counts: Uint32Array; readonly colours: Uint32Array; total: number };

/** As many pixels as are looked at, or up to four times as many: enough for a thousandth of a share. */
const ENOUGH_PIXELS = 600_000;

/** How far apart pixels are compared to tell flat colour from a photograph: further than a strong JPEG's blur. */
const PAIR_PX = 8;
const PAIR_EVERY_PX = 13;

/** Channels differ by no more than this between pixels of one flat colour. */
const ALIKE = 4;

/** Counts colours, clear pixels and flatness over an area. */
export function tallyPixels({ words, widthPx }: PixelWords, area: Spot, rim: Ground | null): Tally {
  const step = Math.max(1, Math.floor(Math.sqrt((area.width * area.height) / ENOUGH_PIXELS)));
  // Memory comes in lines of 16 pixels: many pixels of few rows cost less than few of many.
  const [stepX, stepY] = step < 3 ? [step, step] : [Math.round(step / 3), step * 3];
  const tally = { step, ink: 0, wideHalfClear: 0, pairs: 0, alikePairs: 0, inner: emptyBoxes(), all: emptyBoxes() };
  const hasRimColour = rimTest(rim);
  const width = area.width;

  // Rows begin at changing places, or a pattern two pixels wide would be seen as plain.
  for (let y = area.y, turn = 0; y < area.y + area.height; y += stepY, turn += 1) {
    const row = words.subarray(y * widthPx + area.x, y * widthPx + area.x + width);
    let before = 0;
    let counts = false;
    for (let x = turn % stepX; x < width; x += stepX) {
      const word = row[x] as number;
      if (word !== before) {
        before = word;
        counts = word >>> 24 >= INK_ALPHA && !hasRimColour(word);
      }
      if (counts) {
        countPixel(tally, word, row, x);
        if (word >>> 24 < SOLID_ALPHA && isWide(words, y * widthPx + area.x + x, widthPx)) tally.wideHalfClear += 1;
      }
    }
    countPairs(tally, row, hasRimColour);
  }
  return tally;
}

function countPixel(tally: Tally, word: number, row: Uint32Array, x: number): void {
  tally.ink += 1;
  if (word >>> 24 < FIRM_ALPHA) return;
  countColour(tally.all, word);
  const next = row[Math.min(x + 1, row.length - 1)] as number;
  const last = row[Math.max(x - 1, 0)] as number;
  if (alike(word, next) && alike(word, last)) countColour(tally.inner, word);
}

/** A smooth edge is not this wide to both sides. */
const WIDE_PX = 3;

function isWide(words: Uint32Array, index: number, widthPx: number): boolean {
  return (
    isHalfClear(words[index - WIDE_PX]) &&
    isHalfClear(words[index + WIDE_PX]) &&
    isHalfClear(words[index - WIDE_PX * widthPx]) &&
    isHalfClear(words[index + WIDE_PX * widthPx])
  );
}

function isHalfClear(word = 0): boolean {
  const alpha = word >>> 24;
  return alpha >= INK_ALPHA && alpha < SOLID_ALPHA;
}

/** Pairs are compared at a few places of a row only: it takes few of them to tell flat from not. */
function countPairs(tally: Tally, row: Uint32Array, hasRimColour: (word: number) => boolean): void {
  for (let x = 0; x + PAIR_PX < row.length; x += PAIR_EVERY_PX) {
    const [near, far] = [row[x] as number, row[x + PAIR_PX] as number];
    if (near >>> 24 < FIRM_ALPHA || far >>> 24 < FIRM_ALPHA || hasRimColour(near) || hasRimColour(far)) continue;
    tally.pairs += 1;
    if (alike(near, far)) tally.alikePairs += 1;
  }
}

function rimTest(rim: Ground | null): (word: number) => boolean {
  if (!rim) return () => false;
  const { red, green, blue, tolerance } = rim;
  return (word) => word >>> 24 >= SOLID_ALPHA && channelDifference(word, red, green, blue) <= tolerance;
}

function emptyBoxes(): ColourBoxes {
  return { counts: new Uint32Array(1 << 15), colours: new Uint32Array(1 << 15), total: 0 };
}

/** Counts a colour, and votes for it as the commonest of its box: another colour takes a vote away again. */
function countColour(boxes: ColourBoxes, word: number): void {
  const box = ((word >> 3) & 31) | ((word >> 6) & 0x3e0) | ((word >> 9) & 0x7c00);
  boxes.counts[box] = (boxes.counts[box] as number) + 1;
  boxes.total += 1;
  // The votes lie above the colour's 24 bits, at most 255 of them.
  const kept = boxes.colours[box] as number;
  const votes = kept >>> 24;
  const rgb = word & 0xffffff;
  if ((kept & 0xffffff) === rgb) {
    if (votes < 255) boxes.colours[box] = kept + 0x1000000;
  } else if (votes > 0) boxes.colours[box] = kept - 0x1000000;
  else boxes.colours[box] = (rgb | 0x1000000) >>> 0;
}

function alike(one: number, other: number): boolean {
  if (one === other) return true;
  return (
    Math.abs((one & 255) - (other & 255)) <= ALIKE &&
    Math.abs(((one >> 8) & 255) - ((other >> 8) & 255)) <= ALIKE &&
    Math.abs(((one >> 16) & 255) - ((other >> 16) & 255)) <= ALIKE
  );
}
