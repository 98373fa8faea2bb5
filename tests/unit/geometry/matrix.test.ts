import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  applyMatrix,
  composed,
  inverted,
  type Matrix,
  matrixParts,
  scaledAndMoved,
  scaleTurnAndMove,
  stretchOf,
} from '@/lib/domain/geometry/matrix';
import type { Point } from '@/lib/domain/geometry/point';

const coordinate = fc.double({ min: -1000, max: 1000, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate });
const similarity = fc
  .tuple(fc.double({ min: 0.01, max: 20, noNaN: true }), fc.double({ min: -7, max: 7, noNaN: true }), point, point)
  .map(([scale, turn, from, to]) => scaleTurnAndMove(scale, turn, from, to));

function expectNear(a: Point, b: Point): void {
  expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-6 * (1 + Math.hypot(b.x, b.y)));
}

describe('maps', () => {
  it('sends a point and back', () => {
    fc.assert(
      fc.property(similarity, point, (map, at) => expectNear(applyMatrix(inverted(map), applyMatrix(map, at)), at)),
    );
  });

  it('does one map after another', () => {
    fc.assert(
      fc.property(similarity, similarity, point, (second, first, at) => {
        expectNear(applyMatrix(composed(second, first), at), applyMatrix(second, applyMatrix(first, at)));
      }),
    );
  });

  it('turns clockwise as seen, since y points down', () => {
    const quarter = scaleTurnAndMove(1, Math.PI / 2, { x: 0, y: 0 }, { x: 0, y: 0 });
    expectNear(applyMatrix(quarter, { x: 1, y: 0 }), { x: 0, y: 1 });
  });

  it('moves the point it turns about to where it should go', () => {
    fc.assert(
      fc.property(point, point, coordinate, (from, to, turn) => {
        expectNear(applyMatrix(scaleTurnAndMove(2, turn, from, to), from), to);
      }),
    );
  });

  it('is drawn the same from its parts', () => {
    const mirrored: Matrix = [-2, 0, 0, 2, 5, 7];
    fc.assert(
      fc.property(fc.oneof(similarity, fc.constant(mirrored)), point, (map, at) => {
        const { x, y, turnRad, scaleX, scaleY } = matrixParts(map);
        const turned = scaleTurnAndMove(1, turnRad, { x: 0, y: 0 }, { x, y });
        expectNear(applyMatrix(turned, { x: at.x * scaleX, y: at.y * scaleY }), applyMatrix(map, at));
      }),
    );
  });

  it('has no parts when it slants, and no way back when it is flat', () => {
    expect(() => matrixParts([1, 0, 0.5, 1, 0, 0])).toThrow(/slants/);
    expect(() => inverted([1, 2, 2, 4, 0, 0])).toThrow(/no way back/);
  });

  it('states how far it stretches along each axis', () => {
    expect(stretchOf(scaledAndMoved(3, 1, 2))).toEqual({ x: 3, y: 3 });
  });
});
