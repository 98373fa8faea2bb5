import { ciede2000 } from '../colour/ciede2000';
import { hexOfRgb, type Lab, labOfRgb } from '../colour/lab';
import type { MendPicture } from './mend-picture';

/** As many colours as are suggested on their own account; the maker may choose up to twelve. */
const MOST_SUGGESTED = 8;

/** Colours that differ less than this are one on a shirt (common practice, no source). ΔE00. */
const ONE_COLOUR = 8;

/** A colour of less than this share of the ink is noise, or too little to have a colour of its own. */
const LEAST_SHARE = 0.004;

/** Neighbours this near in every channel lie inside an area and not on its edge. */
const INSIDE = 16;

/** Rounds of moving the middles: they hardly move after half of these. */
const ROUNDS = 16;

/** Looked at are about this many pixels: more would not change the middles. */
const SAMPLED = 1_000_000;

type Bin = { count: number; red: number; green: number; blue: number };
type Weighted = { readonly lab: Lab; readonly rgb: readonly [number, number, number]; readonly count: number };

/**
 * The few colours a picture is made of, most of it first, as `#RRGGBB`: k-means over the colours inside its areas (Lloyd,
 * IEEE Transactions on Information Theory 28, 1982), in L*a*b*, begun with the commonest colour and then always the one worst
 * covered by those chosen, so that the same picture has the same colours every time. Empty where nothing is solid.
 */
export function suggestedPalette(picture: MendPicture, most = MOST_SUGGESTED): string[] {
  const colours = insideColours(picture);
  const total = colours.reduce((sum, { count }) => sum + count, 0);
  let middles = startingMiddles(colours, most);
  for (let round = 0; round < ROUNDS; round += 1) middles = movedMiddles(colours, middles);
  const shares = sharesOf(colours, middles, total);
  return merged(middles, shares)
    .filter(({ share }) => share >= LEAST_SHARE)
    .map(({ middle: { rgb } }) => hexOfRgb(Math.round(rgb[0]), Math.round(rgb[1]), Math.round(rgb[2])));
}

/** Colours inside areas, taken together in boxes of eight steps a channel; all solid ones where lines have no inside. */
function insideColours(picture: MendPicture): Weighted[] {
  const inside = binned(picture, true);
  const bins = inside.size > 0 ? inside : binned(picture, false);
  return [...bins.values()]
    .map(({ count, red, green, blue }) => {
      const rgb = [red / count, green / count, blue / count] as const;
      return { lab: labOfRgb(Math.round(rgb[0]), Math.round(rgb[1]), Math.round(rgb[2])), rgb, count };
    })
    .sort((one, other) => other.count - one.count);
}

function binned({ rgba, widthPx, heightPx }: MendPicture, onlyInside: boolean): Map<number, Bin> {
  const bins = new Map<number, Bin>();
  const step = Math.max(1, Math.round(Math.sqrt((widthPx * heightPx) / SAMPLED)));
  const rim = onlyInside ? 1 : 0;
  for (let y = rim; y < heightPx - rim; y += step) {
    for (let x = rim; x < widthPx - rim; x += step) {
      const at = (y * widthPx + x) * 4;
      if ((rgba[at + 3] ?? 0) < 250 || (onlyInside && !isInside(rgba, at, widthPx * 4))) continue;
      const [red, green, blue] = [rgba[at] ?? 0, rgba[at + 1] ?? 0, rgba[at + 2] ?? 0];
      const name = ((red >> 3) << 10) | ((green >> 3) << 5) | (blue >> 3);
      const bin = bins.get(name) ?? { count: 0, red: 0, green: 0, blue: 0 };
      bin.count += 1;
      bin.red += red;
      bin.green += green;
      bin.blue += blue;
      bins.set(name, bin);
    }
  }
  return bins;
}

/** Whether the eight pixels around show the same area. */
function isInside(rgba: Uint8Array, at: number, row: number): boolean {
  for (const down of [-row, 0, row]) {
    for (const across of [-4, 0, 4]) if (!alike(rgba, at, at + down + across)) return false;
  }
  return true;
}

function alike(rgba: Uint8Array, one: number, other: number): boolean {
  for (let channel = 0; channel < 4; channel += 1) {
    if (Math.abs((rgba[one + channel] ?? 0) - (rgba[other + channel] ?? 0)) > INSIDE) return false;
  }
  return true;
}

function startingMiddles(colours: readonly Weighted[], most: number): Weighted[] {
  const [first] = colours;
  if (!first) return [];
  const middles = [first];
  const apart = colours.map(({ lab }) => ciede2000(lab, first.lab));
  while (middles.length < most) {
    let [worst, next] = [0, -1];
    for (const [index, { count }] of colours.entries()) {
      const away = apart[index] ?? 0;
      const weight = away < ONE_COLOUR ? 0 : count * away * away;
      if (weight > worst) [worst, next] = [weight, index];
    }
    const chosen = colours[next];
    if (!chosen) break;
    middles.push(chosen);
    for (const [index, { lab }] of colours.entries()) {
      apart[index] = Math.min(apart[index] ?? 0, ciede2000(lab, chosen.lab));
    }
  }
  return middles;
}

/** Squared plain distance in L*a*b*: what k-means minimises. */
function squared(one: Lab, other: Lab): number {
  return (one.l - other.l) ** 2 + (one.a - other.a) ** 2 + (one.b - other.b) ** 2;
}

function nearestMiddle(lab: Lab, middles: readonly Weighted[]): number {
  let [nearest, least] = [0, Number.POSITIVE_INFINITY];
  for (const [index, middle] of middles.entries()) {
    const away = squared(lab, middle.lab);
    if (away < least) [nearest, least] = [index, away];
  }
  return nearest;
}

function movedMiddles(colours: readonly Weighted[], middles: readonly Weighted[]): Weighted[] {
  const sums = middles.map(() => ({ count: 0, red: 0, green: 0, blue: 0 }));
  for (const { lab, rgb, count } of colours) {
    const sum = sums[nearestMiddle(lab, middles)];
    if (!sum) continue;
    sum.count += count;
    sum.red += rgb[0] * count;
    sum.green += rgb[1] * count;
    sum.blue += rgb[2] * count;
  }
  return middles.map((middle, index) => {
    const { count, red, green, blue } = sums[index] ?? { count: 0, red: 0, green: 0, blue: 0 };
    if (count === 0) return middle;
    const rgb = [red / count, green / count, blue / count] as const;
    return { lab: labOfRgb(Math.round(rgb[0]), Math.round(rgb[1]), Math.round(rgb[2])), rgb, count };
  });
}

function sharesOf(colours: readonly Weighted[], middles: readonly Weighted[], total: number): number[] {
  const shares = middles.map(() => 0);
  for (const { lab, count } of colours) {
    const nearest = nearestMiddle(lab, middles);
    shares[nearest] = (shares[nearest] ?? 0) + count / total;
  }
  return shares;
}

/** Middles that moved together are one colour, named after the larger. */
function merged(middles: readonly Weighted[], shares: readonly number[]): { middle: Weighted; share: number }[] {
  const kept: { middle: Weighted; share: number }[] = [];
  const ordered = middles
    .map((middle, index) => ({ middle, share: shares[index] ?? 0 }))
    .sort((one, other) => other.share - one.share);
  for (const each of ordered) {
    const same = kept.find(({ middle }) => ciede2000(middle.lab, each.middle.lab) < ONE_COLOUR);
    if (same) same.share += each.share;
    else kept.push({ ...each });
  }
  return kept.sort((one, other) => other.share - one.share);
}
