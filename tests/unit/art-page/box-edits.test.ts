import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BOX_EDGES, boxBetween, edgeAt, movedBox, withEdge } from '@/components/art-page/box-edits';
import type { Spot } from '@/lib/domain/art/art-facts';

const picture = { widthPx: 400, heightPx: 90 };
const place = fc.record(
  { x: fc.double({ min: -200, max: 900 }), y: fc.double({ min: -200, max: 900 }) },
  { noNullPrototype: true },
);
const noNaN = place.filter(({ x, y }) => !Number.isNaN(x) && !Number.isNaN(y));
const box = fc.tuple(noNaN, noNaN).map(([a, b]) => boxBetween(a, b, picture));

function isOnPicture({ x, y, width, height }: Spot): boolean {
  const whole = [x, y, width, height].every(Number.isInteger);
  return whole && x >= 0 && y >= 0 && width >= 1 && height >= 1 && x + width <= 400 && y + height <= 90;
}

describe('a box over a picture', () => {
  it('lies on the picture in whole pixels wherever its corners are drawn', () => {
    fc.assert(fc.property(box, isOnPicture));
  });

  it('keeps its size when it is moved, and stops at the edge', () => {
    fc.assert(
      fc.property(box, noNaN, (start, by) => {
        const moved = movedBox(start, by, picture);
        expect({ width: moved.width, height: moved.height }).toEqual({ width: start.width, height: start.height });
        expect(isOnPicture(moved)).toBe(true);
      }),
    );
  });

  it('moves one edge and leaves the others, never past the one across', () => {
    fc.assert(
      fc.property(box, fc.constantFrom(...BOX_EDGES), fc.integer({ min: -50, max: 500 }), (start, edge, at) => {
        const moved = withEdge(start, edge, at, picture);
        expect(isOnPicture(moved)).toBe(true);
        for (const other of BOX_EDGES) if (other !== edge) expect(edgeAt(moved, other)).toBe(edgeAt(start, other));
      }),
    );
  });

  it('is the same whichever two opposite corners it is drawn between', () => {
    fc.assert(
      fc.property(noNaN, noNaN, (a, b) => {
        expect(boxBetween(a, b, picture)).toEqual(boxBetween(b, a, picture));
        expect(boxBetween({ x: a.x, y: b.y }, { x: b.x, y: a.y }, picture)).toEqual(boxBetween(a, b, picture));
      }),
    );
  });
});
