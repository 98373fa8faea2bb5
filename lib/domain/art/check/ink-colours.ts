import { ciede2000 } from '../colour/ciede2000';
import { hexOfRgb, type Lab, labOfRgb } from '../colour/lab';
import type { ColourBoxes, Tally } from './tally';

export type InkColour = { readonly hex: string; readonly share: number };

/** Colours nearer than this are one ink to whoever looks at a shirt (common practice, no source). ΔE00. */
const ONE_INK = 5;
/** What is taken for one colour of one-colour art: a JPEG's noise, a scanner's. ΔE00. */
const ONE_COLOUR_ART = 10;
/** So much of one-colour art has its colour; the rest are a smooth edge's and a JPEG's. */
const NEARLY_ALL = 0.97;

const MOST_COLOURS = 24;
/** As many boxes of colours as are compared with each other: those of the most ink. */
const MOST_BOXES = 500;

/**
 * The colours of the ink, most of it first. Shares are of all firm ink, so that they may add up to less than 1. `ground` is
 * the colour it lies on, with which lines too fine to have an inside are mixed.
 */
export function inkColours(tally: Tally, ground: Rgb | null = null): InkColour[] {
  const { boxes, mixed } = boxesToCount(tally);
  return clusters(boxes, ONE_INK, mixed ? ground : null)
    .slice(0, MOST_COLOURS)
    .map(({ rgb, count }) => ({ hex: hexOf(rgb), share: count / boxes.total }));
}

/** The colour of art that has only one; null otherwise. */
export function oneColour(tally: Tally, ground: Rgb | null = null): string | null {
  const { boxes, mixed } = boxesToCount(tally);
  if (boxes.total === 0) return null;
  const [most] = clusters(boxes, ONE_COLOUR_ART, mixed ? ground : null);
  return most && most.count / boxes.total >= NEARLY_ALL ? hexOf(most.rgb) : null;
}

/** How much of the ink the first few colours make up, 0 to 1. */
export function shareOfFirst(colours: readonly InkColour[], first: number): number {
  return colours.slice(0, first).reduce((sum, { share }) => sum + share, 0);
}

/** Pixels inside of areas, which are no mixture of two colours; or all, where lines are too fine to have an inside. */
function boxesToCount({ inner, all }: Tally): { boxes: ColourBoxes; mixed: boolean } {
  const mixed = inner.total * 5 < all.total;
  return { boxes: mixed ? all : inner, mixed };
}

type Rgb = { readonly red: number; readonly green: number; readonly blue: number };

type Cluster = { readonly rgb: number; readonly lab: Lab; count: number };

function clusters({ counts, colours }: ColourBoxes, within: number, ground: Rgb | null): Cluster[] {
  const filled: { rgb: number; count: number }[] = [];
  for (let box = 0; box < counts.length; box += 1) {
    const count = counts[box] ?? 0;
    if (count > 0) filled.push({ rgb: (colours[box] ?? 0) & 0xffffff, count });
  }
  filled.sort((a, b) => b.count - a.count);
  const found: Cluster[] = [];
  for (const { rgb, count } of filled.slice(0, MOST_BOXES)) {
    const lab = labOfRgb(rgb & 255, (rgb >> 8) & 255, (rgb >> 16) & 255);
    const nearest = found.find((cluster) => nearEnough(cluster.lab, lab, within));
    if (nearest) nearest.count += count;
    else found.push({ rgb, lab, count });
  }
  const unmixed = ground ? withoutMixtures(found, ground) : found;
  return unmixed.sort((a, b) => b.count - a.count);
}

/** Channels of a mixture stray by no more than this from the straight way between what is mixed. */
const MIXTURE = 20;

/** Gives colours that lie between the ground and a colour further from it to that colour. */
function withoutMixtures(found: readonly Cluster[], ground: Rgb): Cluster[] {
  const away = ({ rgb }: Cluster) => [
    (rgb & 255) - ground.red,
    ((rgb >> 8) & 255) - ground.green,
    (rgb >> 16) - ground.blue,
  ];
  const lengthOf = (vector: readonly number[]) => Math.hypot(...vector);
  const strongestFirst = [...found].sort((a, b) => lengthOf(away(b)) - lengthOf(away(a)));
  const kept: Cluster[] = [];
  for (const cluster of strongestFirst) {
    const own = away(cluster);
    const pure = kept.find((stronger) => {
      const full = away(stronger);
      const part = lengthOf(own) / lengthOf(full);
      return own.every((channel, index) => Math.abs(channel - part * (full[index] ?? 0)) <= MIXTURE);
    });
    if (pure) pure.count += cluster.count;
    else kept.push(cluster);
  }
  return kept;
}

/** ΔE00 is never more than a little above the plain distance and costs far more, so the plain one is asked first. */
function nearEnough(one: Lab, other: Lab, within: number): boolean {
  const plain = Math.hypot(one.l - other.l, one.a - other.a, one.b - other.b);
  if (plain > within * 6) return false;
  return ciede2000(one, other) < within;
}

function hexOf(rgb: number): string {
  return hexOfRgb(rgb & 255, (rgb >> 8) & 255, (rgb >> 16) & 255);
}
