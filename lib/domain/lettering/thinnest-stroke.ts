import { flattened, type Path } from '../geometry/path';
import { between, type Point } from '../geometry/point';
import type { FontRef } from './lettering';
import { linePath } from './line-path';
import type { TypeEngine } from './type-engine';

/** Strokes under this break away in washing or never stick (suppliers' sheets ask for it; common practice, no source). */
export const THINNEST_STROKE_MM = 0.5;

/** Letters that between them have every stroke of a font: stems, bars, diagonals, bows, and the numbers. */
const TELLING = ['HEFTL', 'AVNM', 'OCSUG', '0123456789'] as const;

/** Curves of a letter cut so finely that a stroke is measured within a hundredth of it. */
const CUTS = 8;

/** Sharp tips and the points where strokes meet are thinner than any stroke: so large a share of the edge is left out. */
const TIPS_SHARE = 0.04;

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

type Side = { readonly from: Point; readonly to: Point };

function strokesOf(shape: Path): { thick: number; long: number }[] {
  const sides = flattened(shape, CUTS).flatMap(sidesOf);
  return sides.flatMap((side) => {
    const long = Math.hypot(side.to.x - side.from.x, side.to.y - side.from.y);
    const middle = between(side.from, side.to, 0.5);
    const across = { x: -(side.to.y - side.from.y) / long, y: (side.to.x - side.from.x) / long };
    // Which side of an edge the ink is on differs by font format: it is where a ray meets edges an odd number of times.
    const inward = [across, { x: -across.x, y: -across.y }].find(
      (way) => hits(middle, way, sides, side).length % 2 === 1,
    );
    const thick = inward && Math.min(...hits(middle, inward, sides, side));
    return thick === undefined || !Number.isFinite(thick) ? [] : [{ thick, long }];
  });
}

function sidesOf(run: readonly Point[]): Side[] {
  return run
    .slice(1)
    .map((to, index) => ({ from: run[index] ?? to, to }))
    .filter(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y) > 1e-6);
}

/** How far along a ray each other side is that it crosses. */
function hits(at: Point, way: Point, sides: readonly Side[], own: Side): number[] {
  const found: number[] = [];
  for (const side of sides) {
    if (side === own) continue;
    const [ax, ay] = [side.from.x - at.x, side.from.y - at.y];
    const [bx, by] = [side.to.x - at.x, side.to.y - at.y];
    const [a, b] = [way.x * ay - way.y * ax, way.x * by - way.y * bx];
    if (a > 0 === b > 0) continue;
    const share = a / (a - b);
    const along = way.x * (ax + (bx - ax) * share) + way.y * (ay + (by - ay) * share);
    if (along > 1e-6) found.push(along);
  }
  return found;
}
