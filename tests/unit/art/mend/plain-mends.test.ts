import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { INK_ALPHA } from '@/lib/domain/art/ink';
import { applyMend } from '@/lib/domain/art/mend/apply-mend';
import { crop, trim } from '@/lib/domain/art/mend/crop';
import { erase } from '@/lib/domain/art/mend/erase';
import { hardenEdge, suggestedHardenAlpha } from '@/lib/domain/art/mend/harden-edge';
import { inkBoxOf } from '@/lib/domain/art/mend/mend-picture';
import { recolour } from '@/lib/domain/art/mend/recolour';
import { turn } from '@/lib/domain/art/mend/turn';
import { alphasOf, anyPicture, painted, pixelAt, pixelsOf, someKinds } from './pictures';

const pictures = anyPicture(someKinds);
const boxes = fc.record({
  x: fc.integer({ min: 0, max: 14 }),
  y: fc.integer({ min: 0, max: 14 }),
  width: fc.integer({ min: 1, max: 14 }),
  height: fc.integer({ min: 1, max: 14 }),
});
const inside = (box: { x: number; y: number; width: number; height: number }, x: number, y: number) =>
  x >= box.x && y >= box.y && x < box.x + box.width && y < box.y + box.height;

describe('mends that change no more than they say', () => {
  it('crops to just the pixels in the box, and to nothing beside the picture', () => {
    fc.assert(
      fc.property(pictures, boxes, (picture, box) => {
        const cropped = crop(picture, box);
        if (box.x >= picture.widthPx || box.y >= picture.heightPx) return cropped === null;
        expect(cropped?.widthPx).toBe(Math.min(box.width, picture.widthPx - box.x));
        expect(cropped?.heightPx).toBe(Math.min(box.height, picture.heightPx - box.y));
        if (!cropped) return false;
        return pixelsOf(cropped).every((pixel, index) => {
          const [x, y] = [index % cropped.widthPx, Math.floor(index / cropped.widthPx)];
          return pixel.join() === pixelAt(picture, x + box.x, y + box.y).join();
        });
      }),
    );
  });

  it('trims to the ink, and a second time to the same', () => {
    fc.assert(
      fc.property(pictures, (picture) => {
        const box = inkBoxOf(picture);
        const trimmed = trim(picture);
        if (!box || !trimmed) return box === null && trimmed === null;
        expect(inkBoxOf(trimmed)).toEqual({ x: 0, y: 0, width: trimmed.widthPx, height: trimmed.heightPx });
        const count = (of: typeof picture) => alphasOf(of).filter((alpha) => alpha >= INK_ALPHA).length;
        expect(count(trimmed)).toBe(count(picture));
        return trim(trimmed) === trimmed;
      }),
    );
  });

  it('erases what lies in the boxes and nothing else', () => {
    fc.assert(
      fc.property(pictures, fc.array(boxes, { minLength: 1, maxLength: 3 }), (picture, erased) => {
        const after = erase(picture, erased);
        return pixelsOf(picture).every((pixel, index) => {
          const [x, y] = [index % picture.widthPx, Math.floor(index / picture.widthPx)];
          const wanted = erased.some((box) => inside(box, x, y)) ? [0, 0, 0, 0] : pixel;
          return pixelAt(after, x, y).join() === wanted.join();
        });
      }),
    );
  });

  it('turns clockwise: the top left pixel goes to the top right, and four quarters are none', () => {
    fc.assert(
      fc.property(pictures, (picture) => {
        const once = turn(picture, 1);
        expect([once.widthPx, once.heightPx]).toEqual([picture.heightPx, picture.widthPx]);
        expect(pixelAt(once, once.widthPx - 1, 0)).toEqual(pixelAt(picture, 0, 0));
        expect(pixelsOf(turn(once, 1))).toEqual(pixelsOf(turn(picture, 2)));
        expect(pixelsOf(turn(turn(picture, 2), 1))).toEqual(pixelsOf(turn(picture, 3)));
        expect(pixelsOf(turn(turn(picture, 3), 1))).toEqual(pixelsOf(picture));
      }),
    );
  });

  it('recolours ink and leaves how clear it is', () => {
    fc.assert(
      fc.property(pictures, (picture) => {
        const after = recolour(picture, '#0A141E');
        expect(alphasOf(after)).toEqual(alphasOf(picture));
        return pixelsOf(after).every((pixel) => pixel[3] === 0 || pixel.slice(0, 3).join() === '10,20,30');
      }),
    );
  });

  it('hardens an edge to solid and clear pixels, and again to the same', () => {
    fc.assert(
      fc.property(pictures, fc.integer({ min: 1, max: 255 }), (picture, alpha) => {
        const after = hardenEdge(picture, alpha);
        expect(alphasOf(after)).toEqual(alphasOf(picture).map((had) => (had >= alpha ? 255 : 0)));
        expect(pixelsOf(hardenEdge(after, alpha))).toEqual(pixelsOf(after));
      }),
    );
  });

  it('leaves the picture it is given as it was, and gives the same pixels each time', () => {
    const steps = [
      { mend: 'crop', box: { x: 1, y: 0, width: 8, height: 9 } },
      { mend: 'erase', boxes: [{ x: 0, y: 0, width: 3, height: 3 }] },
      { mend: 'trim' },
      { mend: 'knockOut', hex: '#FFFFFF', tolerance: 8, fromEdges: true, enclosed: [{ x: 2, y: 2 }] },
      { mend: 'clearSpecks', smallerThanPx: 3 },
      { mend: 'hardenEdge', alpha: 100 },
      { mend: 'recolour', hex: '#123456' },
      { mend: 'thicken', byPx: 1.5 },
      { mend: 'dots', cellPx: 4, turnCentideg: 2_250 },
      { mend: 'turn', quarters: 1 },
    ] as const;
    fc.assert(
      fc.property(pictures, fc.constantFrom(...steps), (picture, step) => {
        const before = pixelsOf(picture);
        const writable = 'boxes' in step ? { ...step, boxes: [...step.boxes] } : step;
        const asked = 'enclosed' in writable ? { ...writable, enclosed: [...writable.enclosed] } : writable;
        const one = applyMend(picture, asked);
        expect(pixelsOf(picture)).toEqual(before);
        expect(applyMend(picture, asked)).toEqual(one);
      }),
    );
  });
});

describe('the suggested threshold', () => {
  // N. Otsu 1979: the best threshold has the least variance within its two classes, here worked out from every pixel.
  const varianceWithin = (alphas: readonly number[], threshold: number) => {
    const spread = (part: readonly number[]) => {
      const mean = part.reduce((sum, value) => sum + value, 0) / part.length;
      return part.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    };
    const below = alphas.filter((alpha) => alpha < threshold);
    const above = alphas.filter((alpha) => alpha >= threshold);
    return below.length > 0 && above.length > 0 ? spread(below) + spread(above) : Number.POSITIVE_INFINITY;
  };

  it('parts clear from solid with the least variance within the two', () => {
    const alphas = fc.array(fc.integer({ min: 0, max: 255 }), { minLength: 4, maxLength: 40 });
    fc.assert(
      fc.property(alphas, (values) => {
        fc.pre(new Set(values).size > 1);
        const picture = painted(values.length, 1, (x) => [0, 0, 0, values[x] ?? 0]);
        const least = Math.min(...Array.from({ length: 255 }, (_, index) => varianceWithin(values, index + 1)));
        expect(varianceWithin(values, suggestedHardenAlpha(picture))).toBeLessThanOrEqual(least * (1 + 1e-9) + 1e-6);
      }),
    );
  });

  it('is the middle where every pixel is clear or solid', () => {
    expect(suggestedHardenAlpha(painted(4, 4, (x) => [0, 0, 0, x < 2 ? 255 : 0]))).toBe(128);
    expect(suggestedHardenAlpha(painted(4, 4, () => [0, 0, 0, 255]))).toBe(128);
  });
});
