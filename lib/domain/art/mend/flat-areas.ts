import { labOfRgb } from '../colour/lab';
import { type MendPicture, rgbOfHex } from './mend-picture';
import type { Rgb } from './un-mix';

/** Neighbours this near in every channel show one area; a pixel with three of them lies inside it and not on its edge. */
const ALIKE = 20;
const ALIKE_INSIDE = 3;

/** Areas as far as this from an edge pixel may be the ones it is mixed of, px. */
const REACH_PX = 2;

/** A pixel of a line too thin to have an inside is sure of its colour up to this, in channels. */
const SURE = 30;

/** Stands for no ink where colours are numbered. */
export const NO_INK = 255;

/**
 * What each pixel of a picture is covered by: up to two of the colours, the share of the first, and how much of the pixel is
 * ink at all. An edge between two areas is told as the mixture it is, and not as a third colour that happens to look like it.
 */
export type FlatAreas = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly first: Uint8Array;
  readonly second: Uint8Array;
  /** 0 to 255 each. */
  readonly firstShare: Uint8Array;
  readonly ink: Uint8Array;
};

/** Tells a picture as flat areas of the given colours, `#RRGGBB`. */
export function flatAreas(picture: MendPicture, hexes: readonly string[]): FlatAreas {
  const { rgba, widthPx, heightPx } = picture;
  const colours = hexes.map(rgbOfHex);
  const nearest = nearestColour(colours);
  const size = widthPx * heightPx;
  const areas = {
    widthPx,
    heightPx,
    first: new Uint8Array(size).fill(NO_INK),
    second: new Uint8Array(size).fill(NO_INK),
    firstShare: new Uint8Array(size).fill(255),
    ink: new Uint8Array(size),
  };
  const inside = new Uint8Array(size);
  for (let index = 0; index < size; index += 1) {
    const alpha = rgba[index * 4 + 3] ?? 0;
    areas.ink[index] = alpha;
    if (alpha === 0) continue;
    areas.first[index] = nearest(colourAt(rgba, index));
    inside[index] = isInside(picture, index) ? 1 : 0;
  }
  const surely = areas.first.slice();
  for (let index = 0; index < size; index += 1) {
    if (inside[index] === 1 || areas.ink[index] === 0) continue;
    const near = areasNear(picture, { surely, inside, colours }, index);
    const mixed = bestMixture(colourAt(rgba, index), near, colours);
    if (!mixed) continue;
    areas.first[index] = mixed.first;
    areas.second[index] = mixed.second;
    areas.firstShare[index] = Math.round(mixed.share * 255);
  }
  return areas;
}

function colourAt(rgba: Uint8Array, index: number): Rgb {
  return [rgba[index * 4] ?? 0, rgba[index * 4 + 1] ?? 0, rgba[index * 4 + 2] ?? 0];
}

/** The number of the colour nearest to another in L*a*b*; each is looked for once. */
function nearestColour(colours: readonly Rgb[]): (colour: Rgb) => number {
  const labs = colours.map((rgb) => labOfRgb(...rgb));
  const known = new Uint8Array(1 << 24);
  return (colour) => {
    const name = (colour[0] << 16) | (colour[1] << 8) | colour[2];
    const found = known[name] ?? 0;
    if (found > 0) return found - 1;
    const { l, a, b } = labOfRgb(...colour);
    let [best, least] = [0, Number.POSITIVE_INFINITY];
    for (const [index, lab] of labs.entries()) {
      const away = (lab.l - l) ** 2 + (lab.a - a) ** 2 + (lab.b - b) ** 2;
      if (away < least) [best, least] = [index, away];
    }
    known[name] = best + 1;
    return best;
  };
}

function isInside({ rgba, widthPx, heightPx }: MendPicture, index: number): boolean {
  const x = index % widthPx;
  const y = (index - x) / widthPx;
  let alike = 0;
  for (let row = Math.max(0, y - 1); row <= Math.min(heightPx - 1, y + 1); row += 1) {
    for (let column = Math.max(0, x - 1); column <= Math.min(widthPx - 1, x + 1); column += 1) {
      if (row === y && column === x) continue;
      if (areAlike(rgba, index * 4, (row * widthPx + column) * 4)) alike += 1;
    }
  }
  return alike >= ALIKE_INSIDE;
}

function areAlike(rgba: Uint8Array, one: number, other: number): boolean {
  for (let channel = 0; channel < 4; channel += 1) {
    if (Math.abs((rgba[one + channel] ?? 0) - (rgba[other + channel] ?? 0)) > ALIKE) return false;
  }
  return true;
}

type Known = { readonly surely: Uint8Array; readonly inside: Uint8Array; readonly colours: readonly Rgb[] };

/** The colours whose areas come near a pixel; of thin lines, which have no inside, those that are sure of their colour. */
function areasNear(
  { rgba, widthPx, heightPx }: MendPicture,
  { surely, inside, colours }: Known,
  index: number,
): number[] {
  const x = index % widthPx;
  const y = (index - x) / widthPx;
  const [withInside, sure] = [new Set<number>(), new Set<number>()];
  for (let row = Math.max(0, y - REACH_PX); row <= Math.min(heightPx - 1, y + REACH_PX); row += 1) {
    for (let column = Math.max(0, x - REACH_PX); column <= Math.min(widthPx - 1, x + REACH_PX); column += 1) {
      const at = row * widthPx + column;
      const label = surely[at] ?? NO_INK;
      const own = colours[label];
      if (!own) continue;
      if (inside[at] === 1) withInside.add(label);
      else if (distance(colourAt(rgba, at), own) <= SURE) sure.add(label);
    }
  }
  return [...(withInside.size >= 2 ? withInside : new Set([...withInside, ...sure]))].sort((one, other) => one - other);
}

function distance([r1, g1, b1]: Rgb, [r2, g2, b2]: Rgb): number {
  return Math.hypot(r1 - r2, g1 - g2, b1 - b2);
}

type Mixture = { readonly first: number; readonly second: number; readonly share: number };

/** The two of the colours that a colour is best told as a mixture of, and the share of the first; null for fewer than two. */
function bestMixture(colour: Rgb, near: readonly number[], colours: readonly Rgb[]): Mixture | null {
  let [best, least]: [Mixture | null, number] = [null, Number.POSITIVE_INFINITY];
  for (const [order, first] of near.entries()) {
    for (const second of near.slice(order + 1)) {
      const [one, other] = [colours[first], colours[second]];
      if (!one || !other) continue;
      const toOne = [one[0] - other[0], one[1] - other[1], one[2] - other[2]] as const;
      const length2 = toOne[0] ** 2 + toOne[1] ** 2 + toOne[2] ** 2;
      if (length2 === 0) continue;
      const way =
        (toOne[0] * (colour[0] - other[0]) + toOne[1] * (colour[1] - other[1]) + toOne[2] * (colour[2] - other[2])) /
        length2;
      const share = Math.min(1, Math.max(0, way));
      const off = Math.hypot(
        colour[0] - other[0] - share * toOne[0],
        colour[1] - other[1] - share * toOne[1],
        colour[2] - other[2] - share * toOne[2],
      );
      if (off < least) [best, least] = [{ first, second, share }, off];
    }
  }
  return best;
}
