import { labOfRgb } from '../colour/lab';
import { type MendPicture, rgbOfHex } from './mend-picture';
import type { Rgb } from './un-mix';

/** An area has an inside where it is this wide and high, px; what is narrower is a thin line, or the edge between two areas. */
const INSIDE_PX = 3;

/**
 * Areas as far as this from an edge pixel may be the ones it is mixed of, px; thin lines from further away, since a slanting
 * one has its full colour only here and there.
 */
const REACH_PX = 2;
const THIN_REACH_PX = 4;

/** A pixel is sure of its colour up to this, in channels. */
const SURE = { clean: 12, noisy: 30 } as const;

/** Beyond this mean difference from their colours, in channels, the insides of areas carry the noise of a JPEG. */
const NOISY = 3;

/**
 * A thin line is taken for the edge between its two neighbours where its colour is so near, in channels, to the line between
 * theirs, or so much of that line's length beyond its ends: saving as JPEG makes edges swing over.
 */
const MIXED = { clean: { off: 12, beyond: 0 }, noisy: { off: 40, beyond: 0.35 } } as const;

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
  for (let index = 0; index < size; index += 1) {
    const alpha = rgba[index * 4 + 3] ?? 0;
    areas.ink[index] = alpha;
    if (alpha > 0) areas.first[index] = nearest(colourAt(rgba, index));
  }
  const surely = areas.first.slice();
  const kind = isNoisy(picture, { surely, inside: insides(surely, widthPx, heightPx), colours }) ? 'noisy' : 'clean';
  for (let index = 0; index < size; index += 1) {
    const own = colours[surely[index] ?? NO_INK];
    if (own && distance(colourAt(rgba, index), own) > SURE[kind]) surely[index] = NO_INK;
  }
  const inside = insides(surely, widthPx, heightPx);
  const known = { surely, inside, colours, mixed: MIXED[kind] };
  for (let index = 0; index < size; index += 1) {
    if (inside[index] === 1 || areas.ink[index] === 0) continue;
    const mixture = bestMixture(colourAt(rgba, index), areasNear(picture, known, index), colours);
    if (!mixture) continue;
    areas.first[index] = mixture.first;
    areas.second[index] = mixture.second;
    areas.firstShare[index] = Math.round(mixture.share * 255);
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

/** Marks the pixels that some square of one colour, three pixels wide and high, covers: an opening by that square. */
function insides(labels: Uint8Array, widthPx: number, heightPx: number): Uint8Array {
  const inside = new Uint8Array(labels.length);
  for (let y = 0; y + INSIDE_PX <= heightPx; y += 1) {
    for (let x = 0; x + INSIDE_PX <= widthPx; x += 1) {
      const corner = y * widthPx + x;
      if (!isSquareOfOne(labels, corner, widthPx)) continue;
      for (let row = 0; row < INSIDE_PX; row += 1) {
        const at = corner + row * widthPx;
        inside.fill(1, at, at + INSIDE_PX);
      }
    }
  }
  return inside;
}

function isSquareOfOne(labels: Uint8Array, corner: number, widthPx: number): boolean {
  const label = labels[corner];
  if (label === NO_INK) return false;
  for (let row = 0; row < INSIDE_PX; row += 1) {
    for (let column = 0; column < INSIDE_PX; column += 1) {
      if (labels[corner + row * widthPx + column] !== label) return false;
    }
  }
  return true;
}

type Labelled = { readonly surely: Uint8Array; readonly inside: Uint8Array; readonly colours: readonly Rgb[] };
type Mixed = { readonly off: number; readonly beyond: number };
type Known = Labelled & { readonly mixed: Mixed };

function isNoisy({ rgba }: MendPicture, { surely, inside, colours }: Labelled): boolean {
  let [sum, count] = [0, 0];
  for (let index = 0; index < inside.length; index += 1) {
    const own = inside[index] === 1 ? colours[surely[index] ?? NO_INK] : undefined;
    if (!own) continue;
    sum += distance(colourAt(rgba, index), own);
    count += 1;
  }
  return count > 0 && sum / count > NOISY;
}

/** The colours whose areas come near a pixel, and those of thin lines that are no mere edge between two others. */
function areasNear({ widthPx, heightPx }: MendPicture, known: Known, index: number): number[] {
  const { surely, inside, colours, mixed } = known;
  const x = index % widthPx;
  const y = (index - x) / widthPx;
  const [withInside, thin] = [new Set<number>(), new Set<number>()];
  for (let row = Math.max(0, y - THIN_REACH_PX); row <= Math.min(heightPx - 1, y + THIN_REACH_PX); row += 1) {
    for (let column = Math.max(0, x - THIN_REACH_PX); column <= Math.min(widthPx - 1, x + THIN_REACH_PX); column += 1) {
      const at = row * widthPx + column;
      const label = surely[at] ?? NO_INK;
      if (label === NO_INK) continue;
      if (inside[at] === 0) thin.add(label);
      else if (Math.max(Math.abs(row - y), Math.abs(column - x)) <= REACH_PX) withInside.add(label);
    }
  }
  const near = [...new Set([...withInside, ...thin])].sort((one, other) => one - other);
  return near.filter((label) => withInside.has(label) || !isBetweenOthers(label, near, colours, mixed));
}

function isBetweenOthers(label: number, near: readonly number[], colours: readonly Rgb[], mixed: Mixed): boolean {
  const colour = colours[label];
  const others = near.filter((other) => other !== label);
  return others.some((first, order) =>
    others.slice(order + 1).some((second) => {
      const [one, other] = [colours[first], colours[second]];
      if (!colour || !one || !other) return false;
      const { way, off } = alongLine(colour, one, other);
      return off <= mixed.off && way >= -mixed.beyond && way <= 1 + mixed.beyond;
    }),
  );
}

/** How far along the line from `from` to `to` a colour lies, 0 to 1 between them, and how far beside it, in channels. */
function alongLine(colour: Rgb, to: Rgb, from: Rgb): { readonly way: number; readonly off: number } {
  const line = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
  const length2 = line[0] ** 2 + line[1] ** 2 + line[2] ** 2;
  if (length2 === 0) return { way: 0, off: distance(colour, from) };
  const way =
    (line[0] * (colour[0] - from[0]) + line[1] * (colour[1] - from[1]) + line[2] * (colour[2] - from[2])) / length2;
  const foot = [from[0] + way * line[0], from[1] + way * line[1], from[2] + way * line[2]] as const;
  return { way, off: distance(colour, foot) };
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
      const { way, off: beside } = alongLine(colour, one, other);
      const share = Math.min(1, Math.max(0, way));
      const off = Math.hypot(beside, (way - share) * distance(one, other));
      if (off < least) [best, least] = [{ first, second, share }, off];
    }
  }
  return best;
}
