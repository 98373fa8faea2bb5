import type { Spot } from '../art-facts';
import { channelDifference, type PixelWords } from './pixel-classes';

/** Sides in the order they are looked at. */
const SIDES = ['top', 'bottom', 'left', 'right'] as const;
type Side = (typeof SIDES)[number];

/** A bar takes no more of the picture's height or width than this: letterboxed photographs have the widest. */
const MOST_DEPTH = 0.4;
const LEAST_DEPTH_PX = 3;
/** Of a bar's lines, pixels that have its colour: a telephone's status line has words and signs on it. */
const PLAIN = 0.45;
/** Of all its pixels together. */
const PLAIN_ON_THE_WHOLE = 0.7;
/** Where a bar ends, its colour ends within a few lines along nearly all of its length. */
const EDGE_LINES = 4;
const GONE = 0.2;
/** Channels of a drawn bar differ by no more than this from its colour; a sky's do. */
const FLAT = 10;
/** As many pixels of a line as are looked at. */
const MOST_SAMPLES = 160;
/** A picture striped from edge to edge is striped on purpose. */
const MOST_BARS_A_SIDE = 3;

/**
 * Plain bars along the sides of a picture, cut off straight from what is inside: a telephone's status line, black bars, the
 * strip of table beside a card. `frame` is the picture's area, which has to be without clear pixels. The bars that lie
 * outermost come first; what is inside of them is `rest`.
 */
export function junkOf(pixels: PixelWords, frame: Spot): { readonly bars: Spot[]; readonly rest: Spot } {
  const bars: Spot[] = [];
  let rest = frame;
  for (let round = 0; round <= MOST_BARS_A_SIDE; round += 1) {
    const found = outermostBars(pixels, rest);
    if (found.length === 0) break;
    // Still bars below so many bars: these are the stripes of a flag.
    if (round === MOST_BARS_A_SIDE) return { bars: [], rest: frame };
    for (const { side, depth } of found) {
      bars.push(barAt(rest, side, depth));
      rest = without(rest, side, depth);
    }
  }
  return bars.length > 0 && isPlain(pixels, rest) ? { bars: [], rest: frame } : { bars, rest };
}

/**
 * Whether an area has one colour: then what lies round it are stripes and no bars. Lines at its edges may still be mixed
 * with what lies beyond.
 */
function isPlain(pixels: PixelWords, area: Spot): boolean {
  const colour = lineColour(lineAt(pixels, area, 'top', area.height >> 1));
  const step = Math.max(1, Math.floor(area.height / 100));
  const mixed = Math.min(MIXED_LINES, area.height >> 2);
  for (let line = mixed; line < area.height - mixed; line += step) {
    if (shareOf(lineAt(pixels, area, 'top', line), colour) < PLAIN_ALL_OVER) return false;
  }
  return true;
}

/** A JPEG mixes colours over blocks of 16 pixels, and leaves a few specks in them. */
const MIXED_LINES = 16;
const PLAIN_ALL_OVER = 0.98;

type Bar = { readonly side: Side; readonly depth: number };

/** The bars of sides that have one; those along the top and the bottom first, since they run from corner to corner. */
function outermostBars(pixels: PixelWords, area: Spot): readonly Bar[] {
  const all = SIDES.flatMap((side) => barOf(pixels, area, side) ?? []);
  const bars = all.filter(({ cornerToCorner }) => cornerToCorner);
  const level = bars.filter(({ side }) => side === 'top' || side === 'bottom');
  if (level.length > 0) return level;
  return bars.length > 0 ? bars : darkFrame(pixels, area, all);
}

/**
 * The bars of a dark rim round something lighter, on two sides at least: a card on a table, a sheet on a scanner. A light
 * rim round something dark is paper, and not looked at here.
 */
function darkFrame(pixels: PixelWords, area: Spot, bars: readonly EndedBar[]): readonly Bar[] {
  if (bars.length < 2) return [];
  const inside = bars.reduce((rest, { side, depth }) => without(rest, side, depth), area);
  const frameLight = Math.max(...bars.map(({ colour }) => lightOf(colour)));
  const isSheet = SIDES.every((side) => {
    const line = lineAt(pixels, inside, side, 0);
    const colour = lineColour(line);
    return shareOf(line, colour) >= PLAIN_ON_THE_WHOLE && lightOf(colour) >= frameLight + SHEET_LIGHTER;
  });
  return isSheet ? bars : [];
}

/** A sheet is lighter than what it lies on by this much of 255. */
const SHEET_LIGHTER = 60;

function lightOf(word: number): number {
  return (77 * (word & 255) + 150 * ((word >> 8) & 255) + 29 * ((word >> 16) & 255)) >> 8;
}

/** The bar along a side, and whether the line it ends at has lost its colour at both ends too; null where there is none. */
function barOf(pixels: PixelWords, area: Spot, side: Side): EndedBar | null {
  const lines = side === 'top' || side === 'bottom' ? area.height : area.width;
  const most = Math.floor(lines * MOST_DEPTH);
  const colour = lineColour(lineAt(pixels, area, side, 0));
  // Of a large picture every few lines are looked at first, and then each of the last few.
  const stride = Math.max(1, Math.floor(lines / LINES_LOOKED_AT));
  let depth = 0;
  let plain = 0;
  for (let pace = stride; ; pace = 1) {
    let share = 1;
    while (depth < most && share >= PLAIN) {
      share = shareOf(lineAt(pixels, area, side, depth), colour);
      if (share >= PLAIN) plain += share * pace;
      if (share >= PLAIN) depth += pace;
    }
    if (pace === 1) break;
    const back = Math.min(depth, pace - 1);
    depth -= back;
    plain -= back;
  }
  if (depth < LEAST_DEPTH_PX || depth >= most || plain < PLAIN_ON_THE_WHOLE * depth) return null;
  for (let line = depth; line < depth + EDGE_LINES; line += 1) {
    const inside = lineAt(pixels, area, side, line);
    if (shareOf(inside, colour) > GONE) continue;
    return { side, depth: line, colour, cornerToCorner: endsChange(inside, colour) };
  }
  return null;
}

/** As many lines as are looked at of a side of a large picture. */
const LINES_LOOKED_AT = 1_000;

/** A bar with its colour, and whether it runs from corner to corner. */
type EndedBar = Bar & { readonly cornerToCorner: boolean; readonly colour: number };

/** Whether both ends of a line have lost a bar's colour: a sheet of paper round a dark box has not. */
function endsChange(line: Uint32Array, colour: number): boolean {
  const few = Math.max(1, Math.round(line.length / 50));
  const ends = [line.slice(0, few), line.slice(-few)];
  return ends.every((end) => shareOf(end, colour) <= 0.5);
}

/** Pixels of the line so many lines in from a side. */
function lineAt({ words, widthPx }: PixelWords, area: Spot, side: Side, depth: number): Uint32Array {
  const level = side === 'top' || side === 'bottom';
  const length = level ? area.width : area.height;
  const samples = Math.min(length, MOST_SAMPLES);
  const x = side === 'left' ? area.x + depth : side === 'right' ? area.x + area.width - 1 - depth : area.x;
  const y = side === 'top' ? area.y + depth : side === 'bottom' ? area.y + area.height - 1 - depth : area.y;
  const [start, stride] = [y * widthPx + x, level ? 1 : widthPx];
  const line = new Uint32Array(samples);
  for (let index = 0; index < samples; index += 1) {
    line[index] = words[start + stride * Math.floor(((index + 0.5) * length) / samples)] as number;
  }
  return line;
}

/** The commonest colour of a line. */
function lineColour(line: Uint32Array): number {
  const counts = new Map<number, number>();
  for (const word of line) counts.set(word & 0xf8f8f8, (counts.get(word & 0xf8f8f8) ?? 0) + 1);
  const [box] = [...counts].reduce((most, one) => (one[1] > most[1] ? one : most), [0, 0]);
  return line.find((word) => (word & 0xf8f8f8) === box) ?? 0;
}

function shareOf(line: Uint32Array, colour: number): number {
  const [red, green, blue] = [colour & 255, (colour >> 8) & 255, (colour >> 16) & 255];
  let same = 0;
  for (const word of line) if (channelDifference(word, red, green, blue) <= FLAT) same += 1;
  return same / line.length;
}

function barAt({ x, y, width, height }: Spot, side: Side, depth: number): Spot {
  if (side === 'top') return { x, y, width, height: depth };
  if (side === 'bottom') return { x, y: y + height - depth, width, height: depth };
  if (side === 'left') return { x, y, width: depth, height };
  return { x: x + width - depth, y, width: depth, height };
}

function without({ x, y, width, height }: Spot, side: Side, depth: number): Spot {
  if (side === 'top') return { x, y: y + depth, width, height: height - depth };
  if (side === 'bottom') return { x, y, width, height: height - depth };
  if (side === 'left') return { x: x + depth, y, width: width - depth, height };
  return { x, y, width: width - depth, height };
}
