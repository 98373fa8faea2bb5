import type { Spot } from '../art-facts';
import { type BackingRule, channelDifference, classOf, FIRM, type PixelWords } from './pixel-classes';

/** Ink, or the room between: what a chord runs through. */
export type Inside = 'ink' | 'room';

/** Where chords are drawn: in the pixels of an area, with what is backing in them. */
export type ChordField = {
  readonly pixels: PixelWords;
  readonly area: Spot;
  readonly backing: BackingRule | null;
  /** The channel difference of the one colour that is drawn on a backing; null where there are several. */
  readonly fullDifference: number | null;
  readonly inside: Inside;
  /** How far every cell is from the next edge, so that a way can be gone in leaps. */
  readonly distances: { readonly squared: Uint16Array; readonly width: number; readonly scale: number };
};

/** A straight way through ink or room from edge to edge: its middle, the way it runs, and its length. In pixels. */
export type Chord = {
  readonly x: number;
  readonly y: number;
  readonly turn: number;
  readonly length: number;
};

/** Half a turn is parted in so many ways. */
export const TURNS = 24;
const WAYS = Array.from({ length: TURNS }, (_, turn) => {
  const angle = (turn * Math.PI) / TURNS;
  return { x: Math.cos(angle), y: Math.sin(angle) };
});

/** The way across one that runs at an angle, in radians. */
export function turnAcross(angle: number): number {
  return Math.round((angle * TURNS) / Math.PI + TURNS / 2);
}

/** The direction of a chord as a unit step. */
export function wayOf(turn: number): { readonly x: number; readonly y: number } {
  return WAYS[((turn % TURNS) + TURNS) % TURNS] ?? { x: 1, y: 0 };
}

const STEP_PX = 0.5;

/** Whether a place lies in what the field's chords run through. Beyond the area there is room and no ink. */
export function isInside({ pixels, area, backing, inside }: ChordField, x: number, y: number): boolean {
  const [px, py] = [Math.floor(x), Math.floor(y)];
  const firm =
    px >= area.x &&
    py >= area.y &&
    px < area.x + area.width &&
    py < area.y + area.height &&
    classOf(pixels.words[py * pixels.widthPx + px] as number, backing) >= FIRM;
  return firm === (inside === 'ink');
}

/** The chord through a place that runs one way; null when it is longer than `most`, or never meets an edge. */
export function chordAt(field: ChordField, x: number, y: number, turn: number, most: number): Chord | null {
  const way = wayOf(turn);
  const forth = reach(field, x, y, way.x, way.y, most);
  if (forth >= most) return null;
  const back = reach(field, x, y, -way.x, -way.y, most - forth);
  if (forth + back >= most) return null;
  const shift = (forth - back) / 2;
  return { x: x + way.x * shift, y: y + way.y * shift, turn, length: forth + back };
}

/** The shortest chord through a place, of those that run much as one does. Null when none is short enough. */
export function shortestChord(field: ChordField, x: number, y: number, most: number, turn: number): Chord | null {
  return shortestOf(field, x, y, most, turn - 2, turn + 2, 1);
}

/** The same where the way is known only by and by. */
export function shortestChordAbout(field: ChordField, x: number, y: number, most: number, turn: number): Chord | null {
  const rough = shortestOf(field, x, y, most, turn - 4, turn + 4, 2);
  if (!rough) return null;
  return shortestOf(field, x, y, rough.length, rough.turn - 1, rough.turn + 1, 2) ?? rough;
}

function shortestOf(
  field: ChordField,
  x: number,
  y: number,
  most: number,
  from: number,
  to: number,
  step: number,
): Chord | null {
  let best: Chord | null = null;
  for (let turn = from; turn <= to; turn += step) {
    best = chordAt(field, x, y, turn, best ? best.length : most) ?? best;
  }
  return best;
}

function reach(field: ChordField, x: number, y: number, dx: number, dy: number, most: number): number {
  let gone = leap(field, x, y);
  while (gone < most && isInside(field, x + dx * gone, y + dy * gone)) {
    gone += leap(field, x + dx * gone, y + dy * gone);
  }
  return gone < most && isBounded(field, x + dx * gone, y + dy * gone) ? gone - STEP_PX / 2 : most;
}

/** How far one may go on from a place without missing an edge: short of the nearest by what cells are coarse by. */
function leap({ area, distances: { squared, width, scale } }: ChordField, x: number, y: number): number {
  const cell = Math.floor((y - area.y) / scale) * width + Math.floor((x - area.x) / scale);
  const free = (Math.sqrt(squared[cell] ?? 0) - COARSE_CELLS) * scale;
  return Math.max(free, STEP_PX);
}

/** From a place in one cell to an edge in another, distance between the cells' middles tells too much by up to this. */
const COARSE_CELLS = 2.5;

/** Ink ends at the area's edge; room there has no other side. */
function isBounded({ area, inside }: ChordField, x: number, y: number): boolean {
  if (inside === 'ink') return true;
  return x >= area.x && y >= area.y && x < area.x + area.width && y < area.y + area.height;
}

const FINE_PX = 0.25;
/** How far past a chord's end an edge may fade. */
const FADE_PX = 2;
/** How far inside of an edge full ink is looked for. */
const LEVEL_PX = 3;

/**
 * A chord's length to a part of a pixel: how much of the way is covered. Half-covered pixels of its edges count for what
 * they cover; on a backing they are held against the strongest difference near that edge, since inks differ.
 */
export function exactLength(field: ChordField, { x, y, turn, length }: Chord): number {
  const way = wayOf(turn);
  const half = length / 2;
  return [1, -1].reduce((sum, sign) => sum + coveredHalf(field, x, y, way.x * sign, way.y * sign, half), 0);
}

function coveredHalf(field: ChordField, x: number, y: number, dx: number, dy: number, half: number): number {
  const full = fullLevel(field, x, y, dx, dy, half);
  let covered = 0;
  let before = 1;
  for (let gone = FINE_PX / 2; gone < half + FADE_PX; gone += FINE_PX) {
    const ink = Math.min(1, strengthAt(field, x + dx * gone, y + dy * gone) / full);
    const share = field.inside === 'ink' ? ink : 1 - ink;
    // Past the edge, more again is the next stroke's.
    if (share < 0.04 || (share < 0.5 && share > before + 0.02)) break;
    covered += share * FINE_PX;
    before = share;
  }
  return covered;
}

/** The strength of full ink near the end of a half chord: 1 where clearness tells, else the strongest difference there. */
function fullLevel(field: ChordField, x: number, y: number, dx: number, dy: number, half: number): number {
  if (!field.backing) return 1;
  if (field.fullDifference !== null) return field.fullDifference / 255;
  const [from, to] =
    field.inside === 'ink' ? [Math.max(0, half - LEVEL_PX), half + 0.5] : [half - 0.5, half + LEVEL_PX];
  let strongest = 1 / 255;
  for (let gone = from; gone <= to; gone += FINE_PX) {
    strongest = Math.max(strongest, strengthAt(field, x + dx * gone, y + dy * gone));
  }
  return strongest;
}

/** How strongly a place prints, 0 to 1, between the middles of the four pixels round it. */
function strengthAt(field: ChordField, x: number, y: number): number {
  const [left, top] = [Math.floor(x - 0.5), Math.floor(y - 0.5)];
  const [right, below] = [x - 0.5 - left, y - 0.5 - top];
  const upper = pixelStrength(field, left, top) * (1 - right) + pixelStrength(field, left + 1, top) * right;
  const lower = pixelStrength(field, left, top + 1) * (1 - right) + pixelStrength(field, left + 1, top + 1) * right;
  return upper * (1 - below) + lower * below;
}

function pixelStrength({ pixels, area, backing }: ChordField, x: number, y: number): number {
  if (x < area.x || y < area.y || x >= area.x + area.width || y >= area.y + area.height) return 0;
  const word = pixels.words[y * pixels.widthPx + x] as number;
  if (!backing) return (word >>> 24) / 255;
  const difference = channelDifference(word, backing.red, backing.green, backing.blue);
  return difference <= backing.tolerance ? 0 : difference / 255;
}
