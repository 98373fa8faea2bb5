import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { boxAround, boxAroundBoxes, grownBox } from '@/lib/domain/geometry/box';
import {
  close,
  curve,
  endOf,
  flattened,
  joined,
  line,
  mirroredPath,
  move,
  type Path,
  pathBox,
  pathData,
  reversedPath,
} from '@/lib/domain/geometry/path';

const coordinate = fc.integer({ min: -800_000, max: 800_000 }).map((um) => um / 1000);
const point = fc.record({ x: coordinate, y: coordinate });
const step = fc.oneof(
  point.map(line),
  fc.tuple(point, point, point).map(([c1, c2, to]) => curve(c1, c2, to)),
);
const run = fc
  .tuple(point, fc.array(step, { minLength: 1, maxLength: 5 }))
  .map(([start, steps]): Path => [move(start), ...steps]);

const drawn = (path: Path) => new svgPathProperties(pathData(path));
const firstPoint = (path: Path) => drawn(path).getPointAtLength(0);

describe('paths', () => {
  // svg-path-properties is an independent path library.
  it('are read by another library as they were meant: same ends, same length walked either way', () => {
    fc.assert(
      fc.property(run, (path) => {
        const there = drawn(path);
        const back = drawn(reversedPath(path));
        expect(back.getTotalLength()).toBeCloseTo(there.getTotalLength(), 3);
        expect(firstPoint(reversedPath(path)).x).toBeCloseTo(endOf(path).x, 6);
        expect(there.getPointAtLength(there.getTotalLength()).y).toBeCloseTo(endOf(path).y, 3);
      }),
      { numRuns: 30 },
    );
  });

  it('come back when reversed or mirrored twice', () => {
    fc.assert(
      fc.property(run, (path) => {
        expect(pathData(reversedPath(reversedPath(path)))).toBe(pathData(path));
        expect(pathData(mirroredPath(mirroredPath(path)))).toBe(pathData(path));
      }),
    );
  });

  it('join end to start without a gap', () => {
    fc.assert(
      fc.property(run, run, (first, second) => {
        const both = joined(first, second);
        expect(endOf(both)).toEqual(endOf(second));
        expect(both.filter(({ step: kind }) => kind === 'move')).toHaveLength(1);
      }),
    );
  });

  it('lie within their box, which is no larger than they are within 0.05 mm', () => {
    const hill: Path = [move({ x: 0, y: 0 }), curve({ x: 0, y: -400 }, { x: 600, y: -400 }, { x: 600, y: 0 })];
    // A cubic with these controls rises to 3/4 of their height.
    expect(pathBox(hill).y).toBeGreaterThanOrEqual(-300);
    expect(pathBox(hill).y).toBeLessThan(-299.95);
  });

  it('are flattened into runs that close where they began', () => {
    const square: Path = [move({ x: 0, y: 0 }), line({ x: 2, y: 0 }), line({ x: 2, y: 2 }), close];
    expect(flattened(square)).toEqual([
      [
        { x: 0, y: 0 },
        { x: 2, y: 0 },
        { x: 2, y: 2 },
        { x: 0, y: 0 },
      ],
    ]);
  });

  it('write coordinates to a micrometre and no further', () => {
    expect(pathData([move({ x: 1.23456, y: -0.0001 })])).toBe('M1.235 0');
  });

  it('refuse what has no meaning, with the value', () => {
    expect(() => reversedPath([line({ x: 0, y: 0 })])).toThrow(/line/);
    expect(() => endOf([move({ x: 0, y: 0 }), close])).toThrow(/close/);
    expect(() => boxAround([])).toThrow(/no points/);
  });
});

describe('boxes', () => {
  it('go round what they are made from', () => {
    const a = boxAround([
      { x: 1, y: 2 },
      { x: 4, y: 8 },
    ]);
    expect(boxAroundBoxes([a, grownBox(a, 1)])).toEqual({ x: 0, y: 1, width: 5, height: 8 });
  });
});
