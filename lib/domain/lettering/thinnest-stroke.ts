import { flattened, type Path } from '../geometry/path';
import type { Point } from '../geometry/point';
import { type Micrometres, mmFromUm } from '../measure/length';
import type { FontRef } from './lettering';
import { linePath } from './line-path';
import { type TypeEngine, UNITS_A_CAP_HEIGHT } from './type-engine';

/** Strokes under this break away in washing or never stick (suppliers' sheets ask for it; common practice, no source). */
export const THINNEST_STROKE_MM = 0.5;

/** Letters that between them have every stroke of a font: stems, bars, diagonals, bows, and the numbers. */
const TELLING = ['HEFTL', 'AVNM', 'OCSUG', '0123456789'] as const;

/** Curves of a letter cut so finely that a stroke is measured within a hundredth of it. */
const CUTS = 8;

/** Sharp tips and the points where strokes meet are thinner than any stroke: so large a share of the edge is left out. */
const TIPS_SHARE = 0.04;

/** A font's thinnest stroke at a letter height, squeezed or not, mm; null where it draws none. */
export function thinnestStrokeMm(
  thinnest: number | null,
  capHeightUm: Micrometres,
  squeezedPercent: number,
): number | null {
  return thinnest === null ? null : (mmFromUm(capHeightUm) * thinnest * squeezedPercent) / 100 / UNITS_A_CAP_HEIGHT;
}

const known = new WeakMap<TypeEngine, Map<string, number | null>>();

/** The thinnest stroke of a font's capitals and digits, thousandths of its letter height; null where it draws none. */
export function thinnestOfFont(font: FontRef, engine: TypeEngine): number | null {
  const byFont = known.get(engine) ?? new Map<string, number | null>();
  known.set(engine, byFont);
  const already = byFont.get(font.sha256);
  if (already !== undefined) return already;
  const letters = TELLING.flatMap((text) =>
    engine.outlineLine(text, font).letters.map((letter) => linePath(one(letter), 0)),
  );
  const thinnest = thinnestOf(letters);
  byFont.set(font.sha256, thinnest);
  return thinnest;
}

function one(letter: Parameters<typeof linePath>[0]['letters'][number]): Parameters<typeof linePath>[0] {
  return { letters: [{ ...letter, x: 0 }], advance: letter.advance, inkBox: null, missing: [], borrowed: [] };
}

/**
 * How thin the strokes of some closed shapes are: from the middle of each piece of an edge straight into the ink to the
 * other side. Of all that edge the thinnest but for tips and joins. Null without ink.
 */
export function thinnestOf(shapes: readonly Path[]): number | null {
  const measured = shapes.flatMap(strokesOf).sort((a, b) => a.thick - b.thick);
  const whole = measured.reduce((sum, { long }) => sum + long, 0);
  let passed = 0;
  for (const { thick, long } of measured) {
    passed += long;
    if (passed > whole * TIPS_SHARE) return thick;
  }
  return null;
}

/** Sides of a shape as numbers in a row: x and y of where each begins and ends. */
type Sides = Float64Array;

function strokesOf(shape: Path): { thick: number; long: number }[] {
  const sides = sidesOf(flattened(shape, CUTS));
  const strokes: { thick: number; long: number }[] = [];
  for (let index = 0; index < sides.length; index += 4) {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = sides.subarray(index, index + 4);
    const long = Math.hypot(x2 - x1, y2 - y1);
    const thick = throughInk(sides, index, (x1 + x2) / 2, (y1 + y2) / 2, (y1 - y2) / long, (x2 - x1) / long);
    if (Number.isFinite(thick)) strokes.push({ thick, long });
  }
  return strokes;
}

function sidesOf(runs: readonly (readonly Point[])[]): Sides {
  const sides: number[] = [];
  for (const run of runs) {
    for (const [index, to] of run.entries()) {
      const from = run[index - 1];
      if (from && Math.hypot(to.x - from.x, to.y - from.y) > 1e-6) sides.push(from.x, from.y, to.x, to.y);
    }
  }
  return Float64Array.from(sides);
}

/**
 * How far it is from the middle of a side straight across the ink to the next side; infinite where there is none. Which way
 * the ink lies differs by font format: it is where a ray meets other sides an odd number of times.
 */
function throughInk(sides: Sides, own: number, x: number, y: number, wayX: number, wayY: number): number {
  let [ahead, behind, nearAhead, nearBehind] = [0, 0, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let index = 0; index < sides.length; index += 4) {
    if (index === own) continue;
    const [ax, ay] = [(sides[index] ?? 0) - x, (sides[index + 1] ?? 0) - y];
    const [bx, by] = [(sides[index + 2] ?? 0) - x, (sides[index + 3] ?? 0) - y];
    const [a, b] = [wayX * ay - wayY * ax, wayX * by - wayY * bx];
    if (a > 0 === b > 0) continue;
    const share = a / (a - b);
    const along = wayX * (ax + (bx - ax) * share) + wayY * (ay + (by - ay) * share);
    if (along > 1e-6) {
      ahead += 1;
      nearAhead = Math.min(nearAhead, along);
    } else if (along < -1e-6) {
      behind += 1;
      nearBehind = Math.min(nearBehind, -along);
    }
  }
  if (ahead % 2 === 1) return nearAhead;
  return behind % 2 === 1 ? nearBehind : Number.POSITIVE_INFINITY;
}
