import { type ArtFacts, MOST_SPOTS, type Spot } from '../art-facts';
import type { CellGrid } from './cell-grid';
import {
  type Chord,
  type ChordField,
  exactLength,
  isInside,
  shortestChord,
  shortestChordAbout,
  TURNS,
  turnAcross,
  wayOf,
} from './chord';
import { type DistanceRoom, squaredDistances } from './edge-distance';
import { keptAlong, type Ridge, ridgeOf } from './ridge';

type ThinSpot = ArtFacts['strokes']['spots'][number];

/** A stroke keeps its thickness for so many times as much each way; what narrows sooner is a corner, a tip or a serif. */
const KEEPS_FOR = 1.5;
/** And for so many pixels at least, below which smooth edges hide what it does. */
const KEEPS_FOR_PX = 5;
const STATIONS = 3;
/** How much it may change on that way: a hand-drawn line does by so much (common practice, no source). */
const STEADY = 0.3;
const STEADY_PX = 1.2;

/** Middles that are tried before a picture is let go of, all in all and in one part of it. */
const MOST_TRIES = 8_000;
const MOST_TRIES_A_PART = 100;
/** Middles side by side tell the same; of those in one block of cells a few are tried. */
const BLOCK_CELLS = 8;
const MOST_TRIES_A_BLOCK = 3;
/** Thin places are marked so far apart at least: a part of the long side. */
const PARTS = 48;

/**
 * The thinnest places of a picture's strokes, or of the room between them, thinnest first: measured across, where the
 * thickness is kept for a while. Tips, corners, round dots and notches are none. Null when there is no such place.
 */
export function thicknessOf(
  grid: CellGrid,
  place: Omit<ChordField, 'distances'>,
  room: DistanceRoom,
): ArtFacts['strokes'] {
  const squared = squaredDistances(grid, place.inside === 'ink' ? 'nothing' : 'same', room);
  const field = { ...place, distances: { squared, width: grid.width, scale: grid.scale } };
  const spots = thinSpots(grid, ridgeOf(grid, squared), field);
  spots.sort((a, b) => a.thicknessPx - b.thicknessPx);
  return { thinnestPx: spots[0]?.thicknessPx ?? null, spots };
}

function thinSpots(grid: CellGrid, { cells, squared }: Ridge, field: ChordField): ThinSpot[] {
  const { width, height, scale, area } = grid;
  const partPx = Math.max(16, Math.max(area.width, area.height) / PARTS);
  const across = Math.ceil(area.width / partPx) + 1;
  const tries = new Uint8Array(across * (Math.ceil(area.height / partPx) + 1));
  const blocksAcross = Math.ceil(width / BLOCK_CELLS);
  const blockTries = new Uint8Array(blocksAcross * Math.ceil(height / BLOCK_CELLS));
  const spots: ThinSpot[] = [];
  let tried = 0;
  for (const cell of cells) {
    if (spots.length >= MOST_SPOTS || tried >= MOST_TRIES) break;
    const [column, row] = [cell % width, Math.floor(cell / width)];
    const block = Math.floor(row / BLOCK_CELLS) * blocksAcross + Math.floor(column / BLOCK_CELLS);
    if ((blockTries[block] as number) >= MOST_TRIES_A_BLOCK) continue;
    blockTries[block] = (blockTries[block] as number) + 1;
    const along = keptAlong(grid, squared, cell);
    if (along === null) continue;
    const [left, top] = [column * scale, row * scale];
    const part = Math.floor(top / partPx) * across + Math.floor(left / partPx);
    if ((tries[part] as number) >= MOST_TRIES_A_PART) continue;
    tries[part] = (tries[part] as number) + 1;
    tried += 1;
    const place = { x: area.x + left, y: area.y + top, turn: turnAcross(along) };
    const spot = measuredAt(field, place, scale, Math.sqrt(squared[cell] as number) * scale);
    if (!spot) continue;
    spots.push(spot);
    tries[part] = MOST_TRIES_A_PART;
  }
  return spots;
}

/** The thickness at a cell that lies between two edges; null when it is not kept there. */
function measuredAt(
  field: ChordField,
  place: Place & { readonly turn: number },
  scale: number,
  distancePx: number,
): ThinSpot | null {
  const start = insideOfCell(field, place.x, place.y, scale);
  if (!start) return null;
  // Between two parallel edges the shortest chord is twice the distance; much longer ones cross something else.
  const middle = shortestChordAbout(field, start.x, start.y, 2.4 * distancePx + 2 * scale + 1, place.turn);
  if (!middle) return null;
  const forth = followed(field, middle, 1);
  const back = forth && followed(field, middle, -1);
  if (!forth || !back) return null;
  const lengths = [middle, forth[0], back[0]].map((chord) => (chord ? exactLength(field, chord) : 0));
  const thicknessPx = lengths.sort((a, b) => a - b)[1] ?? 0;
  return thicknessPx > 0 ? { ...spotRound(field.area, middle), thicknessPx } : null;
}

/** Chords along a stroke at steady steps one way; null when its thickness is not kept. */
function followed(field: ChordField, middle: Chord, sign: 1 | -1): Chord[] | null {
  const thickness = middle.length;
  const step = Math.max(KEEPS_FOR * thickness, KEEPS_FOR_PX) / STATIONS;
  const changes = Math.max(STEADY * thickness, STEADY_PX);
  const chords: Chord[] = [];
  let at = middle;
  for (let station = 0; station < STATIONS; station += 1) {
    // The turn may pass half a circle on the way; the sign then stays with the direction that was walked.
    const way = wayOf(at.turn);
    const wraps = Math.floor(at.turn / TURNS) % 2 === 0 ? 1 : -1;
    const x = at.x - way.y * wraps * sign * step;
    const y = at.y + way.x * wraps * sign * step;
    const inside = insideNear(field, x, y, way, thickness);
    const next = inside && shortestChord(field, inside.x, inside.y, thickness + changes + 0.5, at.turn);
    if (!next || Math.abs(next.length - thickness) > changes) return null;
    chords.push(next);
    at = next;
  }
  return chords;
}

/** A line hardly a pixel wide jumps from row to row; it is looked for a little to each side. */
const ASIDE = [0, 0.6, -0.6, 1.1, -1.1];

function insideNear(field: ChordField, x: number, y: number, way: Place, thickness: number): Place | null {
  for (const aside of ASIDE) {
    if (Math.abs(aside) > thickness / 2 + 0.7) continue;
    const place = { x: x + way.x * aside, y: y + way.y * aside };
    if (isInside(field, place.x, place.y)) return place;
  }
  return null;
}

type Place = { readonly x: number; readonly y: number };

function insideOfCell(field: ChordField, left: number, top: number, scale: number): Place | null {
  for (let down = 0; down < scale; down += 1) {
    for (let across = 0; across < scale; across += 1) {
      const [x, y] = [left + across + 0.5, top + down + 0.5];
      if (isInside(field, x, y)) return { x, y };
    }
  }
  return null;
}

/** The box that is marked round a thin place: the chord and as much again along the stroke. */
function spotRound(area: Spot, { x, y, length }: Chord): Spot {
  const reach = Math.max(4, length);
  const left = Math.max(area.x, Math.floor(x - reach));
  const top = Math.max(area.y, Math.floor(y - reach));
  const right = Math.min(area.x + area.width, Math.ceil(x + reach));
  const bottom = Math.min(area.y + area.height, Math.ceil(y + reach));
  return { x: left, y: top, width: Math.max(1, right - left), height: Math.max(1, bottom - top) };
}
