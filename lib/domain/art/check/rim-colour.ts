import type { Spot } from '../art-facts';
import { channelDifference, type PixelWords } from './pixel-classes';

/** The colour that most of a rim has. Channels 0 to 255. */
export type RimColour = {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
  /** Of the rim's pixels. */
  readonly share: number;
  /** Of each side's pixels: top, right, bottom, left. */
  readonly sideShares: readonly [number, number, number, number];
  /** How many of the four corners have it. */
  readonly corners: number;
  /** How far 95 % of the pixels that have it stay within, by their most different channel. */
  readonly spread: number;
};

/** Pixels this near by every channel are taken for one colour: what a strong JPEG does to a flat one (common practice). */
const ONE_COLOUR = 20;

/** A backing is solid; a rim that lets the cloth through has none. */
const RIM_ALPHA = 250;

/** The pixels of an area's outermost rows and columns, side by side: top, right, bottom, left. */
function rimOf(
  { words, widthPx }: PixelWords,
  { x, y, width, height }: Spot,
): [number[], number[], number[], number[]] {
  const at = (px: number, py: number) => words[py * widthPx + px] ?? 0;
  const across = evenly(width).map((index) => x + index);
  const down = evenly(height).map((index) => y + index);
  return [
    across.map((px) => at(px, y)),
    down.map((py) => at(x + width - 1, py)),
    across.map((px) => at(px, y + height - 1)),
    down.map((py) => at(x, py)),
  ];
}

/** As many pixels of a side as are looked at, its two ends among them. */
const MOST_OF_A_SIDE = 1_000;

function evenly(length: number): number[] {
  const count = Math.min(length, MOST_OF_A_SIDE);
  return Array.from({ length: count }, (_, index) => Math.round((index * (length - 1)) / Math.max(1, count - 1)));
}

/** The colour that most of the solid pixels round an area's rim have; null where none of them is solid. */
export function rimColour(pixels: PixelWords, area: Spot): RimColour | null {
  const sides = rimOf(pixels, area);
  const solid = sides.flat().filter((word) => word >>> 24 >= RIM_ALPHA);
  if (solid.length === 0) return null;

  let colour = commonest(solid);
  for (let time = 0; time < 3; time += 1) colour = meanOf(solid.filter((word) => hasColour(word, colour)));
  colour = exactly(solid, colour);
  const [red, green, blue] = colour;
  const has = (word: number) => word >>> 24 >= RIM_ALPHA && hasColour(word, colour);
  const [top, right, bottom, left] = sides.map((side) => side.filter(has).length / side.length) as RimShares;
  const members = solid.filter(has);
  const differences = members.map((word) => channelDifference(word, red, green, blue)).sort((a, b) => a - b);
  const corners = [sides[0][0], sides[0].at(-1), sides[2][0], sides[2].at(-1)];
  return {
    red,
    green,
    blue,
    share: (area.width * (top + bottom) + area.height * (left + right)) / (2 * (area.width + area.height)),
    sideShares: [top, right, bottom, left],
    corners: corners.filter((word) => word !== undefined && has(word)).length,
    spread: differences[Math.floor(differences.length * 0.95)] ?? 0,
  };
}

type RimShares = [number, number, number, number];
type Rgb = readonly [red: number, green: number, blue: number];

function hasColour(word: number, [red, green, blue]: Rgb): boolean {
  return channelDifference(word, red, green, blue) <= ONE_COLOUR;
}

/** Where the rim's colours crowd: the middle of the fullest of 16 × 16 × 16 boxes. */
function commonest(words: readonly number[]): Rgb {
  const counts = new Map<number, number>();
  for (const word of words) {
    const box = ((word & 0xf0) >> 4) | ((word & 0xf000) >> 8) | ((word & 0xf00000) >> 12);
    counts.set(box, (counts.get(box) ?? 0) + 1);
  }
  const [box] = [...counts].reduce((most, one) => (one[1] > most[1] ? one : most));
  return [(box & 15) * 16 + 8, ((box >> 4) & 15) * 16 + 8, ((box >> 8) & 15) * 16 + 8];
}

function meanOf(words: readonly number[]): Rgb {
  const sums = words.reduce(
    ([r, g, b], word): [number, number, number] => [
      r + (word & 255),
      g + ((word >> 8) & 255),
      b + ((word >> 16) & 255),
    ],
    [0, 0, 0] as [number, number, number],
  );
  const [r, g, b] = sums.map((sum) => Math.round(sum / words.length)) as [number, number, number];
  return [r, g, b];
}

/** The very colour that half of the near ones have, white and not nearly white, or else the mean that was found. */
function exactly(words: readonly number[], mean: Rgb): Rgb {
  const near = words.filter((word) => hasColour(word, mean));
  const counts = new Map<number, number>();
  for (const word of near) counts.set(word & 0xffffff, (counts.get(word & 0xffffff) ?? 0) + 1);
  const [rgb, count] = [...counts].reduce((most, one) => (one[1] > most[1] ? one : most), [0, 0]);
  return count * 2 >= near.length ? [rgb & 255, (rgb >> 8) & 255, (rgb >> 16) & 255] : mean;
}
